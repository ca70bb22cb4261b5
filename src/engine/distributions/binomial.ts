/**
 * Upper tail of the binomial distribution: the probability of at least so many successes.
 *
 * @param successes whole, 0 to `trials`.
 * @param trials whole, 0 or more; few, for the terms are added one by one.
 * @param probability of a success, in [0, 1).
 */
export function binomialUpperTail(successes: number, trials: number, probability: number): number {
  const odds = probability / (1 - probability);
  let term = (1 - probability) ** trials;
  let tail = successes === 0 ? term : 0;
  for (let k = 1; k <= trials; k += 1) {
    term *= ((trials - k + 1) / k) * odds;
    if (k >= successes) tail += term;
  }
  return tail;
}
