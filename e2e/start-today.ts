import { DateTime } from "luxon";
import { query } from "./designer";

/** A zone in which it is the middle of the day: eight in the morning is some hours ago there. */
function noonZone(): string {
  const hour = DateTime.utc().hour;
  const ahead = 12 - hour;
  // The sign of these names is the other way round.
  return ahead === 0 ? "Etc/GMT" : `Etc/GMT${ahead > 0 ? "-" : "+"}${Math.abs(ahead)}`;
}

/** Lets somebody have accepted days ago, and their test start today where they and the dates of the test are, some hours ago. */
export async function startToday(testerId: string) {
  const zone = noonZone();
  const day = (days: number) => DateTime.now().setZone(zone).plus({ days }).toISODate() ?? "";
  const dates = { startOn: day(0), swatchBy: day(20), reportBy: day(60) };
  await query("UPDATE tester SET accepted_at = now() - interval '3 days', time_zone = $2, dates = $3 WHERE id = $1", [
    testerId,
    zone,
    JSON.stringify(dates),
  ]);
  await query(
    `UPDATE listing SET document = jsonb_set(document, '{timeZone}', to_jsonb($2::text))
     FROM tester WHERE tester.id = $1 AND listing.call_id = tester.call_id`,
    [testerId, zone],
  );
  return { zone, dates };
}
