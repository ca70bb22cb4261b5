import { formatPath, ownValue, type ApplicantsDocument, type Fault } from "../pattern";

/**
 * Sizes with more locked applicants than they have spots.
 *
 * @returns one fault per size, at the first lock that exceeds its capacity.
 */
export function lockFaults({ pattern, places, applicants }: ApplicantsDocument): Fault[] {
  return pattern.sizes.flatMap(({ id, label }) => {
    const wanted = ownValue(places, id)?.wanted ?? 0;
    const locks = applicants.flatMap(({ locked }, index) => (locked === id ? [index] : []));
    const first = locks[wanted];
    if (first === undefined) return [];
    const says = `${locks.length === 1 ? "1 applicant is" : `${locks.length} applicants are`} locked in ${label}, where ${testers(wanted)} wanted: want more there, or take a lock away.`;
    return [{ path: formatPath(["applicants", first, "locked"]), says }];
  });
}

function testers(wanted: number): string {
  if (wanted === 0) return "no tester is";
  return wanted === 1 ? "1 tester is" : `${wanted} testers are`;
}
