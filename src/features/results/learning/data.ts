import "server-only";
import type { CallAccess } from "@/features/calls/access";
import { database } from "@/server/database";

interface ToLearn {
  /** What the designer's earlier tests show of the spreads: once, with the first report. */
  readonly spreads: boolean;
  /** What their own earlier tests show of testers: once of each, with their first report. */
  readonly habits: boolean;
}

/** What a call has yet to learn from earlier tests before it is analysed; nothing, most of the time. */
export async function toLearn({ callId, pattern }: CallAccess): Promise<ToLearn> {
  const [row] = await database().$queryRaw<ToLearn[]>`
    SELECT
      call.prior_at IS NULL AND EXISTS (
        SELECT FROM report JOIN tester ON tester.id = report.tester_id WHERE tester.call_id = call.id) AS spreads,
      EXISTS (
        SELECT FROM tester
        WHERE tester.call_id = call.id AND tester.habits_read_at IS NULL
          AND EXISTS (SELECT FROM report WHERE report.tester_id = tester.id)) AS habits
    FROM call
    WHERE call.id = ${callId}::uuid AND EXISTS (
      SELECT FROM membership
      WHERE membership.pattern_id = call.pattern_id AND membership.account_id = ${pattern.accountId}::uuid)`;
  return row ?? { spreads: false, habits: false };
}
