import type { PatternDocument, Size } from "@/engine/pattern";
import { answersIn, type FitArea } from "./fit-board";
import { answersWords } from "./fit-copy";

/** How many say tight, right and loose, far too or a little. */
export interface FitTally {
  readonly tight: number;
  readonly right: number;
  readonly loose: number;
}

/** What testers of one size say of one area, for the tapes of the measurements that govern it. */
export interface AreaInSize {
  readonly area: FitArea;
  readonly row: FitArea["rows"][number];
  readonly tally: FitTally;
}

/**
 * The size that the picture shows: the requested one, else the one most testers find tight or loose, then the one with the most answers, then the smallest.
 *
 * @returns null where there is no such size.
 */
export function pictureSize(
  { sizes }: Pick<PatternDocument, "sizes">,
  areas: readonly FitArea[],
  asked: string | readonly string[] | undefined,
): Size | null {
  if (asked !== undefined) return sizes.find(({ id }) => id === asked) ?? null;
  const weighed = sizes.map((size) => {
    const rows = areasInSize(areas, size);
    const sum = (of: (row: AreaInSize) => number) => rows.reduce((total, row) => total + of(row), 0);
    return { size, amiss: sum(({ tally }) => tally.tight + tally.loose), said: sum(({ row }) => answersIn(row)) };
  });
  const [first] = weighed.toSorted((left, right) => right.amiss - left.amiss || right.said - left.said);
  return first?.size ?? null;
}

/** Every area in one size, including those without answers. */
export function areasInSize(areas: readonly FitArea[], size: Size): AreaInSize[] {
  return areas.flatMap((area) =>
    area.rows.filter((row) => row.size.id === size.id).map((row) => ({ area, row, tally: fitTally(row.counts) })),
  );
}

/** @param counts of answers from far too tight to far too loose. */
export function fitTally([farTight = 0, tight = 0, right = 0, loose = 0, farLoose = 0]: readonly number[]): FitTally {
  return { tight: farTight + tight, right, loose: loose + farLoose };
}

/** The answers for each measurement that governs an area with answers in this size. */
export function fitMarks(
  areas: readonly FitArea[],
  size: Size,
): { readonly measurement: string; readonly tally: FitTally; readonly title: string }[] {
  return areasInSize(areas, size)
    .filter(({ row }) => answersIn(row) > 0)
    .flatMap(({ area, row, tally }) =>
      area.governing.map(({ id, label }) => ({
        measurement: id,
        tally,
        title: `${label}: ${answersWords(row.counts, area)}`,
      })),
    );
}
