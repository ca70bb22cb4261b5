import "server-only";
import { cache } from "react";
import type { LinkTarget } from "@/features/mail/schema";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { linkedId, linkTo, opens } from "@/server/link-key";
import type { Proof } from "@/server/proof";

/** Proof that somebody holds an invitation's link, whoever they are. */
export interface InvitedAccess extends Proof<"invited tester"> {
  readonly testerId: string;
  readonly callId: string;
  readonly linkVersion: number;
}

/** @throws {AppError} "not-found" if the link leads to no tester, or has been replaced. */
export const invitedAccess = cache(async (link: string): Promise<InvitedAccess> => {
  const id = linkedId(link);
  const row =
    id === null
      ? null
      : await database().tester.findFirst({
          where: { id, invitedAt: { not: null } },
          select: { callId: true, linkVersion: true },
        });
  if (id === null || row === null || !opens(link, "invitation", { id, version: row.linkVersion }))
    throw new AppError("not-found");
  return { testerId: id, ...row } as InvitedAccess;
});

/** Where clause of the tester whose link was proved. */
export function invitedScope({ testerId, callId, linkVersion }: InvitedAccess): Prisma.TesterWhereUniqueInput {
  return { id: testerId, callId, linkVersion, invitedAt: { not: null } };
}

/** The address's last part that invites a tester, for who may invite. */
export function invitationLink({ testerId, linkVersion }: { testerId: string; linkVersion: number }): string {
  return linkTo("invitation", { id: testerId, version: linkVersion });
}

/** The same for a message, which makes the link when it is sent. */
export function invitationTarget({ testerId: id, linkVersion }: { testerId: string; linkVersion: number }): LinkTarget {
  return { before: "/invited/", key: "invitation", id, version: linkVersion };
}
