import "server-only";
import { designerOfPattern } from "@/features/patterns/data";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { applicationScope, type ApplicationAccess } from "../access";
import { ownApplicationAddress } from "./own-address";

/** Everything that is stored about an application, as its applicant can take it along. @throws {AppError} "not-found". */
export async function applicationRecord(access: ApplicationAccess) {
  const [record] = await applicationRecords(applicationScope(access));
  if (record === undefined) throw new AppError("not-found");
  return record;
}

/** The same of several. @param where by the proof of whoever asks. */
export async function applicationRecords(where: Prisma.ApplicationWhereInput) {
  const rows = await database().application.findMany({ where, orderBy: { createdAt: "asc" }, select: RECORD });
  return rows.map(({ id, call, body, messages, views, ...row }) => ({
    test: call.title,
    designer: call.pattern.memberships[0]?.account.name ?? null,
    ...row,
    bodyCm: body?.measurements ?? null,
    bodyAsTyped: body?.typed ?? null,
    mail: messages,
    whoLooked: views.map(({ viewer, ...view }) => ({ ...view, who: viewer?.name ?? null })),
    yourPage: ownApplicationAddress(id),
  }));
}

const RECORD = {
  ...{ id: true, document: true, createdAt: true, withdrawnAt: true, agreedAt: true, size: true },
  agreement: { select: { version: true, text: true } },
  contact: { select: { name: true, email: true } },
  body: { select: { measurements: true, typed: true } },
  call: {
    select: {
      title: true,
      pattern: {
        select: { memberships: designerOfPattern },
      },
    },
  },
  messages: {
    where: { testerId: null },
    orderBy: { createdAt: "asc" },
    select: { kind: true, createdAt: true, sentAt: true, content: true },
  },
  views: { orderBy: { seenAt: "desc" }, select: { kind: true, seenAt: true, viewer: { select: { name: true } } } },
} satisfies Prisma.ApplicationSelect;
