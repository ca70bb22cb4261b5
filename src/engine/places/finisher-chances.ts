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
export function* finisherChances({ finishers, loss }: FinishersWanted, max: number): Generator<number> {
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
