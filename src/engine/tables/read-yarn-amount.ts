import type { PatternDocument } from "../pattern";
import { GRAMS_PER_OUNCE, METRES_PER_YARD, parseNumber } from "../units";
import { plainWhole } from "./plain-number";
import { gramsInRange, readGrams, type ReadNumber } from "./read-cell";

/** Unit of amounts of yarn that name none. */
export type YarnUnit = "g" | "oz" | "m" | "yd" | "balls";

type Yarn = PatternDocument["yarns"][number];

const WRITTEN: readonly (readonly [RegExp, (amount: number, yarn: Yarn) => number])[] = [
  [/^(.*?)\s*(?:kg|kilos?)\.?$/i, (kilos) => kilos * 1_000],
  [/^(.*?)\s*(?:oz|ounces?)\.?$/i, (ounces) => ounces * GRAMS_PER_OUNCE],
  [/^(.*?)\s*(?:m|mtr|met(?:re|er)s?)\.?$/i, (metres, yarn) => gramsOf(metres, yarn)],
  [/^(.*?)\s*(?:yds?|yards?)\.?$/i, (yards, yarn) => gramsOf(yards * METRES_PER_YARD, yarn)],
  [
    /^(.*?)\s*(?:balls?|skeins?|hanks?|cakes?|knäuel|stränge?|pelotes?|ovillos?)\.?$/i,
    (balls, yarn) => balls * yarn.gramsPerBall,
  ],
];

/**
 * Yarn that a tester used, g: a weight, or a length or number of balls of the pattern's yarn.
 *
 * @param text such as `410`, `0.47 kg`, `5 oz`, `1.020 m`, `1,100 yds` or `4 1/2 skeins`.
 * @param unit of a number without one.
 */
export function readYarnAmount(text: string, { unit, yarn }: { unit: YarnUnit; yarn: Yarn }): ReadNumber {
  const plain = plainWhole(text);
  const isBare = parseNumber(plain).ok;
  const whole = isBare && unit !== "g" ? `${plain} ${unit}` : plain;
  for (const [written, grams] of WRITTEN) {
    const amount = written.exec(whole)?.[1];
    if (amount === undefined) continue;
    const parsed = parseNumber(amount, "50 or 50.5");
    return parsed.ok ? gramsInRange(grams(parsed.value, yarn), text) : parsed;
  }
  return readGrams(plain);
}

function gramsOf(metres: number, { metresPerBall, gramsPerBall }: Yarn): number {
  return (metres / metresPerBall) * gramsPerBall;
}

/** Unit of a column of amounts, as its heading names it. */
export function yarnUnitNamed(heading: string): YarnUnit {
  if (/\bballs?\b|\bskeins?\b|\bhanks?\b|knäuel|pelotes?/i.test(heading)) return "balls";
  if (/\bgrams?\b|\bg\b|gramm/i.test(heading)) return "g";
  if (/\boz\b|\bounces?\b/i.test(heading)) return "oz";
  if (/\byards?\b|\byds?\b|\byardage\b/i.test(heading)) return "yd";
  return /\bmet(?:re|er)s?\b|\(m\)/i.test(heading) ? "m" : "g";
}
