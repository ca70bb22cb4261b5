import "server-only";
import { cache } from "react";
import type { LinkTarget } from "@/features/mail/schema";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { linkedId, opens } from "@/server/link-key";
import type { Proof } from "@/server/proof";

/** Nothing voids it: whoever has a summary can always stop them. */
const LINK_VERSION = 1;

/** Proof that somebody holds the link of an account's daily summary. It opens the choice whether it comes, and nothing else. */
export interface SummaryAccess extends Proof<"daily summary"> {
  readonly accountId: string;
}

/** @throws {AppError} "not-found" if the link leads to no account. */
export const summaryAccess = cache(async (link: string): Promise<SummaryAccess> => {
  const id = linkedId(link);
  const isKnown = id !== null && opens(link, "summary", { id, version: LINK_VERSION });
  const row = isKnown ? await database().account.findUnique({ where: { id }, select: { id: true } }) : null;
  if (row === null) throw new AppError("not-found");
  return { accountId: row.id } as SummaryAccess;
});

/** Where a summary's link to that choice leads. */
export function summaryTarget(accountId: string): LinkTarget {
  return { before: "/reminders/", key: "summary", id: accountId, version: LINK_VERSION };
}
