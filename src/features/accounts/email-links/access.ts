import "server-only";
import { cache } from "react";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { openedId } from "@/server/link-key";
import type { Proof } from "@/server/proof";
import type { LinkTarget } from "@/features/mail/schema";

/** Each link has a row of its own, so that none is made anew. */
const LINK_VERSION = 1;

/** Proof that somebody holds a link that was mailed to an address, whether or not it can still be used. */
export interface EmailLinkAccess extends Proof<"email link"> {
  readonly emailLinkId: string;
}

/** @throws {AppError} "not-found" if the link is none of ours. */
export const emailLinkAccess = cache(async (link: string): Promise<EmailLinkAccess> => {
  const id = openedId(link, "email", LINK_VERSION);
  const row = id === null ? null : await database().emailLink.findUnique({ where: { id }, select: { id: true } });
  if (row === null) throw new AppError("not-found");
  return { emailLinkId: row.id } as EmailLinkAccess;
});

/** Where a message's link leads. */
export function emailLinkTarget(id: string): LinkTarget {
  return { before: "/email-links/", key: "email", id, version: LINK_VERSION };
}
