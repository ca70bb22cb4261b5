import type { Places } from "../pattern";

type Place = Places[string];

/** What most designers have time for; see docs/method.md#places. */
const DEFAULT_MOST = 3;

/** How many testers a size may have: what is done by hand and by invitations goes no further. */
export function mostTesters(place: Place | undefined): number {
  return place === undefined ? 0 : (place.most ?? place.wanted);
}

/** The same where nobody has typed it: 3, or as many as are wanted. */
export function usualMost(wanted: number): number {
  return Math.max(wanted, DEFAULT_MOST);
}
