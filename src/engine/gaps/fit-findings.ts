import type { CallDocument } from "../pattern";
import type { Cell } from "./gaps-output";

/** A body measurement at which garments that came out as promised are felt to be tight or loose. */
export interface FitFinding {
  readonly measurement: string;
  readonly area: string;
  readonly feels: "tight" | "loose";
  /** First and last size of those that feel so. */
  readonly from: string;
  readonly to: string;
  /** So many of `testers` who said anything of it there. */
  readonly agree: number;
  readonly testers: number;
}

/** A share of testers that chance alone would hardly make, were one in three to find fault (common practice, no source). */
const USUAL_SHARE = 1 / 3;
const UNUSUAL = 0.05;
const LEAST_TESTERS = 3;

interface Answer {
  readonly size: number;
  readonly scale: number;
}

/**
 * Where the size is right and the fit is not: that asks for another ease, not for another count.
 *
 * Sizes are taken together as all, or from one that answered upward, or up to one, whichever is least likely to be chance.
 *
 * @param cells of `gaps`; only sizes in which the measurement was not found off count.
 * @returns at most one finding a measurement, in the pattern's order; areas are those of the measurements' targets.
 * @see docs/method.md#fit.
 */
export function fitFindings({ pattern, testers }: CallDocument, cells: readonly Cell[]): FitFinding[] {
  const order = new Map(pattern.sizes.map(({ id }, at) => [id, at]));
  return pattern.measurements.flatMap(({ id, target }) => {
    if (target === undefined || !("body" in target)) return [];
    const off = new Set(
      cells.filter(({ measurement, verdict }) => measurement === id && verdict === "off").map(({ size }) => size),
    );
    const answers = testers.flatMap(({ size, fit = [] }): Answer[] =>
      off.has(size)
        ? []
        : fit.filter(({ area }) => area === target.body).map(({ scale }) => ({ size: order.get(size) ?? 0, scale })),
    );
    const found = leastLikely(answers, pattern.sizes.length);
    const from = pattern.sizes[found?.from ?? -1]?.id;
    const to = pattern.sizes[found?.to ?? -1]?.id;
    if (found === undefined || from === undefined || to === undefined) return [];
    return [
      { measurement: id, area: target.body, feels: found.feels, from, to, agree: found.agree, testers: found.testers },
    ];
  });
}

function leastLikely(answers: readonly Answer[], sizes: number) {
  const answered = [...new Set(answers.map(({ size }) => size))];
  const ranges = [
    { from: 0, to: sizes - 1 },
    ...answered.flatMap((at) => [
      { from: at, to: sizes - 1 },
      { from: 0, to: at },
    ]),
  ];
  const found = ranges.flatMap(({ from, to }) => {
    const inside = answers.filter(({ size }) => size >= from && size <= to);
    return (["tight", "loose"] as const).map((feels) => {
      const agree = inside.filter(({ scale }) => (feels === "tight" ? scale < 0 : scale > 0)).length;
      return { from, to, feels, agree, testers: inside.length, chance: chanceOfAtLeast(agree, inside.length) };
    });
  });
  const [best] = found
    .filter(({ testers, chance }) => testers >= LEAST_TESTERS && chance <= UNUSUAL)
    .toSorted((left, right) => left.chance - right.chance || right.to - right.from - (left.to - left.from));
  return best;
}

/** Chance that at least `agree` of `testers` do, were each to do so in one case in three. */
function chanceOfAtLeast(agree: number, testers: number): number {
  let term = (1 - USUAL_SHARE) ** testers;
  let chance = agree === 0 ? term : 0;
  for (let k = 1; k <= testers; k += 1) {
    term *= ((testers - k + 1) / k) * (USUAL_SHARE / (1 - USUAL_SHARE));
    if (k >= agree) chance += term;
  }
  return chance;
}
