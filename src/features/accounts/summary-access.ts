import "server-only";
import { cache } from "react";
import type { LinkTarget } from "@/features/mail/schema";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { openedId } from "@/server/link-key";
import type { Proof } from "@/server/proof";

/** Nothing voids it: whoever has a summary can always stop them. */
const LINK_VERSION = 1;

/** Proof that somebody holds the link of an account's daily summary. It opens the choice whether it comes, and nothing else. */
export interface SummaryAccess extends Proof<"daily summary"> {
  readonly accountId: string;
}

/** @throws {AppError} "not-found" if the link leads to no account. */
export const summaryAccess = cache(async (link: string): Promise<SummaryAccess> => {
  const id = openedId(link, "summary", LINK_VERSION);
  const row = id === null ? null : await database().account.findUnique({ where: { id }, select: { id: true } });
  if (row === null) throw new AppError("not-found");
  return { accountId: row.id } as SummaryAccess;
});

/** Where a summary's link to that choice leads. */
export function summaryTarget(accountId: string): LinkTarget {
  return { before: "/reminders/", key: "summary", id: accountId, version: LINK_VERSION };
}
