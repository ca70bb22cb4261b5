import { finisherChances, type FinishersWanted } from "./finisher-chances";

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
