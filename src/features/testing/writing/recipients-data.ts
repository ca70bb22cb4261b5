import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { mailedTesters, type MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { untilWords } from "@/ui/moment-copy";
import type { FieldValues } from "./message-fields";

/** Somebody whom a message goes to. */
export interface Recipient {
  readonly name: string;
  /** Null where they gave none. */
  readonly email: string | null;
}

/** Names and addresses of testers of the call, in its order; ids of others, and of those who deleted their data, are skipped. */
export async function readRecipients(access: CallAccess, testerIds: readonly string[]): Promise<Recipient[]> {
  const rows = await database().tester.findMany({
    where: { ...chosenTesters(access, testerIds), contact: { isNot: null } },
    orderBy: { position: "asc" },
    select: { code: true, contact: { select: { name: true, email: true } } },
  });
  return rows.map(({ code, contact }) => ({ name: contact?.name ?? code, email: contact?.email ?? null }));
}

/** Where clause of testers that an editor chose. */
export function chosenTesters(access: CallAccess, testerIds: readonly string[]): Prisma.TesterWhereInput {
  return { id: { in: [...testerIds] }, call: callEditScope(access) };
}

/** What a message says of each of them who has an address. */
export interface WrittenTo {
  readonly testerId: string;
  readonly name: string;
  /** Who signs. */
  readonly from: string;
  readonly values: FieldValues;
}

/** Those of the chosen testers who can be written to, with what is filled in for each. */
export async function readWrittenTo(access: CallAccess, testerIds: readonly string[]): Promise<readonly WrittenTo[]> {
  const testers = await mailedTesters(database(), chosenTesters(access, testerIds));
  return testers.map(({ row, tester }) => ({
    ...{ testerId: tester.testerId, name: tester.name, from: row.call.pattern.memberships[0]?.account.name ?? "" },
    values: fieldValues(tester),
  }));
}

export function fieldValues({ name, size, dates, timeZone }: MailedTester): FieldValues {
  return {
    ...{ name, size },
    "swatch day": dates === null ? null : untilWords(dates.swatchBy.at, timeZone),
    "report day": dates === null ? null : untilWords(dates.reportBy.at, timeZone),
  };
}
