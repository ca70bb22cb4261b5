import "server-only";
import { cache } from "react";
import type { LinkTarget } from "@/features/mail/schema";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { openedId } from "@/server/link-key";
import type { Proof } from "@/server/proof";

/** Nothing voids it: whoever has a reminder can always stop reminders. */
const LINK_VERSION = 1;

/** Proof that somebody holds the link of a tester's reminders. It opens the choice of how often and the dates that
 * reminders are about, and nothing else. */
export interface RemindersAccess extends Proof<"reminders"> {
  readonly testerId: string;
}

/** @throws {AppError} "not-found" if the link leads to no tester. */
export const remindersAccess = cache(async (link: string): Promise<RemindersAccess> => {
  const id = openedId(link, "reminders", LINK_VERSION);
  const row = id === null ? null : await database().tester.findUnique({ where: { id }, select: { id: true } });
  if (row === null) throw new AppError("not-found");
  return { testerId: row.id } as RemindersAccess;
});

/** Where clause of the tester whose link was proved. */
export function remindersScope({ testerId }: RemindersAccess): Prisma.TesterWhereUniqueInput {
  return { id: testerId };
}

/** Where a reminder's link to that choice leads. */
export function remindersTarget(testerId: string): LinkTarget {
  return { before: "/reminders/", key: "reminders", id: testerId, version: LINK_VERSION };
}

/** Where a reminder's link to the calendar file leads. */
export function calendarTarget(testerId: string): LinkTarget {
  return { before: "/reminders/", key: "reminders", id: testerId, version: LINK_VERSION, after: "/dates.ics" };
}
