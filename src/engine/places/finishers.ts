import { MAX_TESTERS } from "../pattern";

export interface FinishersWanted {
  /** Testers who should finish; whole, 0 or more. */
  readonly finishers: number;
  /** Probability that a tester drops out, 0 or more and below 1; testers are independent. */
  readonly loss: number;
}

/**
 * Probabilities that at least so many finish, with as many invited as should finish, then with one more each time.
 *
 * @param max the last chance is that with so many invited.
 * @throws {RangeError} for finishers that are not whole, and a loss out of range.
 * @see Binomial distribution, added up as the negative binomial: the last of the finishers is the j-th invited. All
 *   terms are positive, so nothing cancels (Johnson, Kemp and Kotz, Univariate discrete distributions; from memory).
 */
function* finisherChances({ finishers, loss }: FinishersWanted, max: number): Generator<number> {
  if (!Number.isInteger(finishers) || finishers < 0) throw new RangeError("finishers must be whole, 0 or more");
  if (!(loss >= 0 && loss < 1)) throw new RangeError("the loss must be 0 or more and below 1");
  let chance = finishers === 0 ? 1 : 0;
  // By logarithms, for the chance that a thousand of a thousand finish is smaller than a double can be.
  let logTerm = finishers * Math.log1p(-loss);
  for (let invited = finishers; invited <= max; invited += 1) {
    if (finishers > 0) chance += Math.exp(logTerm);
    yield Math.min(1, chance);
    logTerm += Math.log(loss) + Math.log(invited / (invited + 1 - finishers));
  }
}

/**
 * Probability that at least so many of the invited finish, independently and each with the same probability.
 *
 * @param invited whole, 0 or more.
 * @returns from 0 to 1.
 * @throws {RangeError} for numbers that are not whole or out of range.
 * @see Binomial distribution; the terms in `finisherChances`.
 */
export function chanceOfFinishers({ invited, ...wanted }: FinishersWanted & { readonly invited: number }): number {
  if (!Number.isInteger(invited) || invited < 0) throw new RangeError("how many are invited must be whole, 0 or more");
  let chance = 0;
  for (const reached of finisherChances(wanted, invited)) chance = reached;
  return chance;
}

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

/** Share of the invited who do not report, until a designer has a record of their own; common practice, no source (docs/method.md#invitations). */
export const DEFAULT_DROPOUT_RATE = 0.3;

/** Probability with which enough of the invited should finish. */
export const DEFAULT_CONFIDENCE = 0.8;
