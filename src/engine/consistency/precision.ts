import { mean, squaredDeviations } from "./summaries";

export type Precision =
  | {
      readonly status: "estimated";
      readonly mean: number;
      /** Standard deviations of repeatability and of reproducibility, in the readings' unit. */
      readonly repeatabilitySd: number;
      readonly reproducibilitySd: number;
    }
  | { readonly status: "no-repeats" | "too-few" };

/**
 * Repeatability (one person) and reproducibility (between people) of a measurement, at one level.
 *
 * @param groups `groups[g][i]` = i-th reading of person g; ragged, order irrelevant, none empty.
 * @returns a negative variance between people counts as 0; a status if there is too little data.
 * @see ISO 5725-2:1994, 7.4, with unequal numbers of readings.
 */
export function precisionOf(groups: readonly (readonly number[])[]): Precision {
  const people = groups.length;
  const readings = groups.reduce((sum, group) => sum + group.length, 0);
  if (people < 2) return { status: "too-few" };
  if (readings === people) return { status: "no-repeats" };
  const middle = mean(groups.flat());
  const within = groups.reduce((sum, group) => sum + squaredDeviations(group), 0) / (readings - people);
  const between = groups.reduce((sum, group) => sum + group.length * (mean(group) - middle) ** 2, 0) / (people - 1);
  const squares = groups.reduce((sum, group) => sum + group.length ** 2, 0);
  const perPerson = (readings - squares / readings) / (people - 1);
  const betweenVariance = Math.max(0, (between - within) / perPerson);
  return {
    status: "estimated",
    mean: middle,
    repeatabilitySd: Math.sqrt(within),
    reproducibilitySd: Math.sqrt(within + betweenVariance),
  };
}
