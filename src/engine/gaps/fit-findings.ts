import { binomialUpperTail } from "../distributions";
import type { CallDocument } from "../pattern";
import type { Cell } from "./gaps-output";

/** A body measurement at which garments that came out as planned feel tight or loose. */
export interface FitFinding {
  readonly measurement: string;
  readonly area: string;
  readonly feels: "tight" | "loose";
  /** First and last size to which the finding applies. */
  readonly from: string;
  readonly to: string;
  /** How many of the `testers` who commented on it agree. */
  readonly agree: number;
  readonly testers: number;
}

/** Expected share of complaints by chance alone (common practice, no source). */
const EXPECTED_SHARE = 1 / 3;
const MAX_CHANCE = 0.05;
const MIN_TESTERS = 3;

interface Answer {
  readonly size: number;
  readonly scale: number;
}

/**
 * Cases in which the size is right and the fit is not: these need a different ease, not different counts.
 *
 * Sizes are pooled as all, from one size upward, or up to one size, whichever is least likely by chance.
 *
 * @param cells of `gaps`; sizes in which the measurement is off are left out.
 * @returns at most one finding a measurement, in the pattern's order; areas are those of the measurements' targets.
 * @see docs/method.md#fit.
 */
export function fitFindings({ pattern, testers }: CallDocument, cells: readonly Cell[]): FitFinding[] {
  const order = new Map(pattern.sizes.map(({ id }, index) => [id, index]));
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
    const found = leastLikelyRange(answers, pattern.sizes.length);
    const from = pattern.sizes[found?.from ?? -1]?.id;
    const to = pattern.sizes[found?.to ?? -1]?.id;
    if (found === undefined || from === undefined || to === undefined) return [];
    return [
      { measurement: id, area: target.body, feels: found.feels, from, to, agree: found.agree, testers: found.testers },
    ];
  });
}

function leastLikelyRange(answers: readonly Answer[], sizes: number) {
  const answered = [...new Set(answers.map(({ size }) => size))];
  const ranges = [
    { from: 0, to: sizes - 1 },
    ...answered.flatMap((index) => [
      { from: index, to: sizes - 1 },
      { from: 0, to: index },
    ]),
  ];
  const found = ranges.flatMap(({ from, to }) => {
    const inside = answers.filter(({ size }) => size >= from && size <= to);
    return (["tight", "loose"] as const).map((feels) => {
      const agree = inside.filter(({ scale }) => (feels === "tight" ? scale < 0 : scale > 0)).length;
      return {
        from,
        to,
        feels,
        agree,
        testers: inside.length,
        chance: binomialUpperTail(agree, inside.length, EXPECTED_SHARE),
      };
    });
  });
  const [best] = found
    .filter(({ testers, chance }) => testers >= MIN_TESTERS && chance <= MAX_CHANCE)
    .toSorted((left, right) => left.chance - right.chance || right.to - right.from - (left.to - left.from));
  return best;
}
