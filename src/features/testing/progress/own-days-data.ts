import "server-only";
import { callScope, type CallAccess } from "@/features/calls/access";
import { testerDatesSchema, type TesterDates } from "@/features/recruiting/listing/schema";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";
import { callTime, listingDays } from "../home/call-time";

/** The days that stand for a tester, in the call's time zone. */
export interface DaysOfTester {
  readonly days: TesterDates;
  /** They are their own, and not the call's. */
  readonly isOwn: boolean;
}

/** A tester's test, as its designer may change it. */
export interface TheirTest {
  /** Null where neither the call nor the tester has days. */
  readonly days: DaysOfTester | null;
  /** Null while it goes on. */
  readonly ended: "by designer" | "by tester" | null;
}

/** @returns null where the tester is of another call. */
export async function readTheirTest(
  access: CallAccess,
  testerId: string,
  connection: Connection = database(),
): Promise<TheirTest | null> {
  const row = await connection.tester.findFirst({
    where: { id: testerId, call: callScope(access) },
    select: { dates: true, stoppedAt: true, stoppedByDesigner: true, call: { select: { listing: listingDays } } },
  });
  if (row === null) return null;
  const ended = row.stoppedAt === null ? null : row.stoppedByDesigner ? "by designer" : "by tester";
  if (row.dates !== null) return { days: { days: testerDatesSchema.parse(row.dates), isOwn: true }, ended };
  const { dates } = callTime(row.call.listing);
  if (dates === null) return { days: null, ended };
  const { startOn, swatchBy, reportBy } = dates;
  return {
    days: { days: { startOn: startOn.day, swatchBy: swatchBy.day, reportBy: reportBy.day }, isOwn: false },
    ended,
  };
}
