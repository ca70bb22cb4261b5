import { fQuantile, studentTQuantile } from "../distributions";
import { mean, standardDeviation } from "./summaries";

/** With fewer testers, one of them cannot be compared with the others. */
const MIN_TESTERS = 3;

/**
 * Mandel's h: the deviation of each tester's mean from the mean of all, in standard deviations of the means.
 *
 * @param means one a tester (a laboratory in the standard), any unit.
 * @returns one h each; null for all if there are fewer than three or if they do not differ.
 * @see ISO 5725-2:1994, 7.3.1.
 */
export function mandelH(means: readonly number[]): (number | null)[] {
  if (means.length < MIN_TESTERS) return means.map(() => null);
  const middle = mean(means);
  const sd = standardDeviation(means);
  return means.map((value) => (sd > 0 ? (value - middle) / sd : null));
}

/**
 * Mandel's k: each tester's standard deviation of repeated readings, divided by the pooled one.
 *
 * @param sds standard deviations of repeated readings, one a tester.
 * @returns one k each; null for all if there are fewer than three or if all are 0.
 * @see ISO 5725-2:1994, 7.3.1.
 */
export function mandelK(sds: readonly number[]): (number | null)[] {
  if (sds.length < MIN_TESTERS) return sds.map(() => null);
  const pooled = Math.sqrt(mean(sds.map((sd) => sd * sd)));
  return sds.map((sd) => (pooled > 0 ? sd / pooled : null));
}

/**
 * Limit that |h| exceeds by chance with a given probability.
 *
 * @param testers how many, at least 3.
 * @param chance such as 0.01 or 0.05.
 * @see ISO 5725-2:1994, 7.3.1 and table 6, in closed form.
 */
export function mandelHLimit(testers: number, chance: number): number {
  const t = studentTQuantile(1 - chance / 2, testers - 2);
  return ((testers - 1) * t) / Math.sqrt(testers * (t * t + testers - 2));
}

/**
 * Limit that k exceeds by chance with a given probability.
 *
 * @param testers how many, at least 2.
 * @param readings how many repeated readings each, at least 2.
 * @param chance such as 0.01 or 0.05.
 * @see ISO 5725-2:1994, 7.3.1 and table 7, in closed form.
 */
export function mandelKLimit(testers: number, readings: number, chance: number): number {
  const f = fQuantile(1 - chance, readings - 1, (testers - 1) * (readings - 1));
  return Math.sqrt(testers / (1 + (testers - 1) / f));
}
