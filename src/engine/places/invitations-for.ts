import { MAX_TESTERS } from "../pattern";
import { finisherChances, type FinishersWanted } from "./finisher-chances";

/** Chances are sums of many terms; one that should equal the required probability may come out a little below it. */
const ROUNDING = 1e-12;

/**
 * The smallest number of invitations with which at least so many finish with at least a chance.
 *
 * @param chance from 0 to below 1.
 * @returns null where more would be needed than a call may have testers.
 * @throws {RangeError} for numbers that are not whole or out of range.
 * @see Binomial distribution; the terms in `finisherChances`.
 */
export function invitationsFor({ chance, ...wanted }: FinishersWanted & { readonly chance: number }): number | null {
  if (!(chance >= 0 && chance < 1)) throw new RangeError("the chance must be 0 or more and below 1");
  let invited = wanted.finishers;
  for (const reached of finisherChances(wanted, MAX_TESTERS)) {
    if (reached >= chance - ROUNDING) return invited;
    invited += 1;
  }
  return null;
}
