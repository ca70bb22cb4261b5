import { ownValue, type Tester } from "../pattern";
import type { PatternIndex } from "../prediction";
import { GRAMS_PER_OUNCE } from "../units";
import { totalSizeM, yarnUses } from "../yarn";
import { fieldOf } from "./fields";
import type { ReadingQuestion, ReadReport } from "./report-context";
import { readWeight } from "./yarn-text";

/**
 * Yarn in a stitch ÷ √(width × height of the stitch): outside the plausible range we ask; a suggested fix must lie within the
 * typical one. Plain knit has about 4.4–4.8 (Munden 1959, from memory); crochet takes more (common practice, no source).
 */
const PLAUSIBLE_RATIO = { min: 2, max: 20 };
const TYPICAL_RATIO = { min: 3, max: 12 };

/** Weights of one ball on the label: a kitchen scale and a ball of yarn are off by less (common practice, no source). */
const ONE_BALL = { min: 0.9, max: 1.1 };

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
    if (key === undefined || isKept || !Number.isFinite(ratio)) return [];
    const found = implausibleAmount(ratio, ballsUsed(read, index));
    const part = ownValue(read.typed, `yarn[${index}].how`) === "balls" ? "balls" : "before";
    return found ? [{ field: fieldOf.yarn(key, part), keptField: fieldOf.yarn(key, "kept"), ...found }] : [];
  });
}

/** Weight of all entries of the same yarn, in balls of the entry's label. @returns NaN where its text is not known. */
function ballsUsed({ report, typed }: ReadReport, index: number): number {
  const yarn = report.yarn[index]?.yarn;
  const grams = report.yarn.filter((used) => used.yarn === yarn).reduce((sum, used) => sum + used.grams, 0);
  const perBall = readWeight(ownValue(typed, `yarn[${index}].gramsPerBall`) ?? "");
  return perBall.ok ? grams / perBall.value : Number.NaN;
}

function implausibleAmount(ratio: number, balls: number): Pick<ReadingQuestion, "slip" | "message"> | undefined {
  if (ratio < TYPICAL_RATIO.min && isWithin(balls, ONE_BALL)) {
    const needed = Math.ceil((balls * TYPICAL_RATIO.min) / ratio);
    const message = `That is one ball, and this many stitches usually take ${needed} or more. Is it the weight of one ball instead of all that you used?`;
    return { slip: "one-ball", message };
  }
  if (isWithin(ratio, PLAUSIBLE_RATIO)) return undefined;
  const said = `That is ${ratio < PLAUSIBLE_RATIO.min ? "very little" : "very much"} yarn for this many stitches.`;
  if (isWithin(ratio * GRAMS_PER_OUNCE, TYPICAL_RATIO))
    return {
      slip: "ounces-as-grams",
      message: `${said} Is the weight in ounces? Then write “oz” behind it.`,
    };
  if (isWithin(ratio * 10, TYPICAL_RATIO) || isWithin(ratio / 10, TYPICAL_RATIO))
    return { slip: "decimal", message: `${said} Is the decimal point in the right place?` };
  return {
    slip: null,
    message: `${said} Please check the weights and the yarn label, or confirm that it is correct.`,
  };
}

function isWithin(value: number, { min, max }: { readonly min: number; readonly max: number }): boolean {
  return value >= min && value <= max;
}
