/**
 * Gauss and Hermite's rule with seven points for a standard normal distribution: the mean of a polynomial of degree 13 or less is
 * exact.
 *
 * @see Abramowitz & Stegun, Handbook of Mathematical Functions (1964), 25.4.46; digits from memory, checked by the moments.
 */
export const NORMAL_NODES = [
  { node: -3.750439717725742, share: 0.0005482688559722178 },
  { node: -2.366759410734541, share: 0.03075712396758651 },
  { node: -1.154405394739968, share: 0.2401231786050127 },
  { node: 0, share: 0.4571428571428571 },
  { node: 1.154405394739968, share: 0.2401231786050127 },
  { node: 2.366759410734541, share: 0.03075712396758651 },
  { node: 3.750439717725742, share: 0.0005482688559722178 },
] as const;
