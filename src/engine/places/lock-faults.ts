import { formatPath, ownValue, type ApplicantsDocument, type Fault } from "../pattern";
import { mostTesters } from "./most-testers";

/**
 * Sizes with more locked applicants than they may have testers.
 *
 * @returns one fault per size, at the first lock that is too many.
 */
export function lockFaults({ pattern, places, applicants }: ApplicantsDocument): Fault[] {
  return pattern.sizes.flatMap(({ id, label }) => {
    const place = ownValue(places, id);
    const most = mostTesters(place);
    const locks = applicants.flatMap(({ locked }, index) => (locked === id ? [index] : []));
    const first = locks[most];
    if (first === undefined) return [];
    const says = `${locks.length === 1 ? "1 applicant is" : `${locks.length} applicants are`} locked in ${label}, where ${most === (place?.wanted ?? 0) ? "" : "at most "}${testers(most)} wanted: want more there, or take a lock away.`;
    return [{ path: formatPath(["applicants", first, "locked"]), says }];
  });
}

function testers(wanted: number): string {
  if (wanted === 0) return "no tester is";
  return wanted === 1 ? "1 tester is" : `${wanted} testers are`;
}
