import "server-only";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import type { MessageStatus } from "./message-status";
import type { MessageKind } from "./schema";

/** @param where by the proof of whoever reads. @returns what became of those messages, the newest first. */
export async function readMessages(
  where: Prisma.MessageWhereInput & { readonly kind?: MessageKind },
): Promise<readonly MessageStatus[]> {
  return await database().message.findMany({
    where,
    orderBy: [{ createdAt: "desc" }, { id: "asc" }],
    select: {
      ...{ id: true, kind: true, address: true, testerId: true, applicationId: true, attempts: true },
      ...{ createdAt: true, sentAt: true, failedAt: true, reply: true },
    },
  });
}
