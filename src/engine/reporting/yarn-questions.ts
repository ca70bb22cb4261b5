import { ownValue, type Tester } from "../pattern";
import type { PatternIndex } from "../prediction";
import { GRAMS_PER_OUNCE } from "../units";
import { totalSizeM, yarnUses } from "../yarn";
import { fieldOf } from "./fields";
import type { ReadingQuestion } from "./question";
import type { ReadReport } from "./report-context";

/**
 * Yarn in a stitch ÷ √(width × height of the stitch): outside the plausible range we ask; a suggested fix must lie within the
 * typical one. Plain knit has about 4.4–4.8 (Munden 1959, from memory); crochet takes more (common practice, no source).
 */
const PLAUSIBLE_RATIO = { min: 2, max: 20 };
const TYPICAL_RATIO = { min: 3, max: 12 };

/** Questions about amounts of yarn that do not go with the number of stitches, one per yarn. */
export function yarnQuestions(
  read: ReadReport,
  { index, tester }: { readonly index: PatternIndex; readonly tester: Tester },
): ReadingQuestion[] {
  return yarnUses(index, tester).flatMap(({ yarn, metres, fabrics }) => {
    const index = read.report.yarn.findIndex((used) => used.yarn === yarn);
    const key = read.keys.yarn[index];
    const ratio = metres / totalSizeM(fabrics);
    const isKept = read.report.yarn.some(
      (used, each) => used.yarn === yarn && ownValue(read.typed, `yarn[${each}].kept`),
    );
    if (key === undefined || isKept || !Number.isFinite(ratio) || isWithin(ratio, PLAUSIBLE_RATIO)) return [];
    const isOunces = isWithin(ratio * GRAMS_PER_OUNCE, TYPICAL_RATIO);
    const isDecimal = isWithin(ratio * 10, TYPICAL_RATIO) || isWithin(ratio / 10, TYPICAL_RATIO);
    const part = ownValue(read.typed, `yarn[${index}].how`) === "balls" ? "balls" : "before";
    return [
      {
        field: fieldOf.yarn(key, part),
        keptField: fieldOf.yarn(key, "kept"),
        slip: isOunces ? ("ounces-as-grams" as const) : isDecimal ? ("decimal" as const) : null,
        message: yarnMessage(ratio, { isOunces, isDecimal }),
      },
    ];
  });
}

function isWithin(value: number, { min, max }: { readonly min: number; readonly max: number }): boolean {
  return value >= min && value <= max;
}

function yarnMessage(
  ratio: number,
  { isOunces, isDecimal }: { readonly isOunces: boolean; readonly isDecimal: boolean },
): string {
  const amount = ratio < PLAUSIBLE_RATIO.min ? "very little" : "very much";
  const said = `That is ${amount} yarn for this many stitches.`;
  if (isOunces) return `${said} Is the weight in ounces? Then write “oz” behind it.`;
  if (isDecimal) return `${said} Is the decimal point in the right place?`;
  return `${said} Please check the weights and the yarn label, or confirm that it is correct.`;
}
