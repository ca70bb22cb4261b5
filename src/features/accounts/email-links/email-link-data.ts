import "server-only";
import type { EmailLinkPurpose } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import type { EmailLinkAccess } from "./access";
import { emailLinkEnd, type EmailLinkEnd } from "./email-link-state";

export interface EmailLinkRead {
  readonly purpose: EmailLinkPurpose;
  readonly address: string;
  /** Null where it can be used. */
  readonly end: EmailLinkEnd | null;
  /** Null: the address has no account yet. */
  readonly account: {
    readonly id: string;
    readonly name: string;
    readonly sessionVersion: number;
    readonly isProven: boolean;
  } | null;
}

/** @throws {AppError} "not-found" if it is gone. */
export async function readEmailLink({ emailLinkId }: EmailLinkAccess, now = new Date()): Promise<EmailLinkRead> {
  const row = await database().emailLink.findUnique({
    where: { id: emailLinkId },
    include: { account: { select: { id: true, name: true, sessionVersion: true, emailVerifiedAt: true } } },
  });
  if (row === null) throw new AppError("not-found");
  const { purpose, address, account } = row;
  const { emailVerifiedAt, ...person } = account ?? { emailVerifiedAt: null };
  const known = "id" in person ? { ...person, isProven: emailVerifiedAt !== null } : null;
  return {
    ...{ purpose, address },
    end: emailLinkEnd({ ...row, currentVersion: account?.sessionVersion ?? null }, now),
    account: known,
  };
}
