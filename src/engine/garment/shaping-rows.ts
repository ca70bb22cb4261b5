import { planShaping, timesText, withNoun } from "../shaping";

/** How often a shaping is worked, and in which rows, in one size. Rows count from the step's first, which is 1. */
export interface ShapingRate {
  readonly times: number;
  /** Left out: spread evenly over the rows. */
  readonly every?: number | undefined;
  readonly everyOther?: boolean | undefined;
  /** Row of the first; with `every`, the row of that number where left out. */
  readonly start?: number | undefined;
}

/** A row in which a shaping falls, and how often: more than once only where rows have run out. */
export interface ShapingRow {
  readonly row: number;
  readonly times: number;
}

/**
 * The rows of a step in which a shaping falls. With `every`, each so many rows; otherwise spread as evenly as whole rows allow,
 * the last in the last row.
 *
 * @param rows that the step has.
 * @returns rows in ascending order, and a sentence where there are too few: what is left over then falls in the last one (row 0
 * where there is none), so that the steps that follow find as many stitches as they expect.
 * @see docs/method.md#shaping.
 */
export function shapingRows(
  rate: ShapingRate,
  rows: number,
): { readonly found: readonly ShapingRow[]; readonly message: string | null } {
  const { times, every, everyOther = false } = rate;
  if (times === 0) return { found: [], message: null };
  const apart = Math.max(every ?? (everyOther ? 2 : 1), 1);
  const start = rate.start ?? apart;
  const needed = start + (times - 1) * apart;
  if (needed <= rows) {
    const found = every === undefined ? evenly(rate, rows) : regular({ times, start, apart });
    return { found: found.map((row) => ({ row, times: 1 })), message: null };
  }
  const fitting = rows < start ? 0 : Math.floor((rows - start) / apart) + 1;
  const found = regular({ times: fitting, start, apart }).map((row) => ({ row, times: 1 }));
  const room = `Shaping ${timesText(times)} takes ${withNoun(needed, "row")}, and there ${rows === 1 ? "is" : "are"} ${rows}.`;
  return {
    found: [...found, { row: rows, times: times - fitting }],
    message: `${room} Work more rows, or shape more often or more stitches at a time.`,
  };
}

function regular({ times, start, apart }: { times: number; start: number; apart: number }): number[] {
  return Array.from({ length: times }, (_, index) => start + index * apart);
}

/** Spread over the rows that follow the first, where that is given, and else over all. */
function evenly({ times, everyOther, start }: ShapingRate, rows: number): number[] {
  const found = start === undefined ? [] : [start];
  const outcome = planShaping(
    { from: 0, to: times - found.length, rows: rows - (start ?? 0) },
    { stitches: 1, edges: "left", ...(everyOther ? { everyOther } : {}) },
  );
  if (outcome.status !== "planned") return found;
  for (const { everyRows, times } of outcome.plan.intervals)
    for (let nth = 0; nth < times; nth += 1) found.push((found.at(-1) ?? 0) + everyRows);
  return found;
}
