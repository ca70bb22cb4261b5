import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import {
  mailedTesters,
  type AddressedTester,
  type MailedTester,
} from "@/features/recruiting/invitations/mailed-tester-data";
import { testerValues } from "@/features/recruiting/own-words/own-words-data";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import type { FieldValues } from "@/features/recruiting/own-words/message-fields-computed";

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
  return testers.map(writtenTo);
}

/** All testers of the call who are in it, for a designer who may change what they get. */
export function testersWrittenTo(access: CallAccess): Prisma.TesterWhereInput {
  const isIn = { invitedAt: { not: null }, stoppedAt: null, declinedAt: null, withdrawnAt: null };
  return { ...isIn, call: callEditScope(access) };
}

/** The same as people, with what a message says to each. */
export async function readAllWrittenTo<Said>(
  access: CallAccess,
  say: (tester: MailedTester) => Said,
): Promise<readonly (WrittenTo & { readonly said: Said })[]> {
  const testers = await mailedTesters(database(), testersWrittenTo(access));
  return testers.map((one) => ({ ...writtenTo(one), said: say(one.tester) }));
}

function writtenTo({ row, tester }: AddressedTester): WrittenTo {
  return {
    ...{ testerId: tester.testerId, name: tester.name, from: row.call.pattern.memberships[0]?.account.name ?? "" },
    values: testerValues(tester),
  };
}
