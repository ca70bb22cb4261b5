import type { PatternDocument } from "../pattern";
import { readsAsYesOrNo, looksNumeric } from "./read-cell";
import type { ColumnChoice } from "./report-choices";
import { matchSize } from "./size-names";
import { normalised, shareOfWords, splitLetter, distinctiveWords } from "./label-text";

/** A column's heading and its non-empty answers. */
export interface HeadedColumn {
  readonly heading: string;
  readonly answers: readonly string[];
}

const LEAVE_OUT =
  /time ?stamp|\bdate\b|e-?mail|address|\blink\b|photo|comment|notes?\b|anything else|feedback|consent|would you/i;
const SWATCH = /swatch|gauge|tension/i;
const STITCHES = /\bst(?:s|itch(?:es)?)?\b/i;
const ROWS = /\brows?\b|\brounds?\b|\brnds?\b/i;
const OVER_WIDTH = /\bover\b|\b10\s*cm\b|\b4\s*(?:in|")/i;
const WASHED = /wash|block/i;
const TOOL = /\bhook|\bneedle|\btool/i;
const HOURS = /\bhours?\b|how long did it take/i;
const YARN = /\byarn|\bgrams?\b|\bweigh|\bused\b/i;
const NAME = /\bname\b|^tester$|who are you/i;
const HANDLE = /\bhandle\b|\bprofile\b|\b(?:user|screen|account) ?name\b|\baccount\b/i;

/** Guesses the content of one column of a form's table. */
export function guessColumn(column: HeadedColumn, pattern: PatternDocument): ColumnChoice {
  const { heading } = column;
  const fabric = pattern.fabrics[0]?.id ?? "";
  if (isSize(column, pattern)) return { kind: "size" };
  const lettered = byLetter(heading, pattern);
  if (lettered !== null && mostlyNumbers(column)) return lettered;
  if (LEAVE_OUT.test(heading)) return { kind: "leave out" };
  if (isHandle(column)) return { kind: "leave out" };
  if (NAME.test(heading)) return { kind: "name" };
  if (WASHED.test(heading) && column.answers.every(readsAsYesOrNo)) return { kind: "washed" };
  if (!mostlyNumbers(column))
    return TOOL.test(heading) && mentionsMillimetres(column) ? { kind: "tool", fabric } : { kind: "leave out" };
  return swatchColumn(heading, fabric) ?? byLabel(heading, pattern) ?? otherNumbers(heading, pattern);
}

/** True if a column asks for a user name on some network, by its heading or by the `@` before most answers. */
export function isHandle({ heading, answers }: HeadedColumn): boolean {
  const marked = answers.filter((answer) => /^\s*@[\p{L}\d_]/u.test(answer)).length;
  return HANDLE.test(heading) || (marked > 0 && marked * 2 >= answers.length);
}

function swatchColumn(heading: string, fabric: string): ColumnChoice | null {
  if (TOOL.test(heading)) return { kind: "tool", fabric };
  const swatch = SWATCH.test(heading);
  if (!swatch && !OVER_WIDTH.test(heading)) return null;
  const counted = STITCHES.test(heading) ? "stitches" : ROWS.test(heading) ? "rows" : null;
  if (counted !== null && !/\bhow (?:wide|tall|high)\b/i.test(heading)) return { kind: `swatch ${counted}`, fabric };
  const unit = /\binch|\bin\b(?!\s*cm)/i.test(heading) ? "in" : "cm";
  if (/wid|across/i.test(heading)) return { kind: "swatch across", fabric, unit };
  if (/height|tall|long|length|along/i.test(heading)) return { kind: "swatch along", fabric, unit };
  return null;
}

function isSize({ heading, answers }: HeadedColumn, { sizes }: PatternDocument): boolean {
  const fitting = answers.filter((answer) => matchSize(answer, sizes).ok).length;
  const asked = /\bsize\b/i.test(heading) && !TOOL.test(heading) && !/\bcup\b|\busual/i.test(heading);
  if (answers.length === 0) return asked;
  return fitting >= answers.length * (asked ? 0.5 : 0.95) && (asked || answers.some((answer) => !looksNumeric(answer)));
}

function byLetter(heading: string, { measurements }: PatternDocument): ColumnChoice | null {
  const alone = /^(?:measurement\s+)?\(?([A-Za-z]\d{0,2})\)?[.:]?(?:\s*[,(]?\s*(?:in\s+)?(?:cm|inches|in)\)?)?$/i.exec(
    heading,
  )?.[1];
  const byName = /\bmeasurement ([A-Za-z]\d{0,2})\b/.exec(heading)?.[1];
  const letter = (splitLetter(heading).letter || alone || byName || "").toUpperCase();
  const found =
    letter === "" ? undefined : measurements.find((measurement) => measurement.letter.toUpperCase() === letter);
  return found ? measured(found.id, heading, found.girth) : null;
}

/** A count where stitches or rows are asked for, else a measurement: the one with the largest share of its words there. */
function byLabel(heading: string, { measurements, counts }: PatternDocument): ColumnChoice | null {
  const asksCount = STITCHES.test(heading) || ROWS.test(heading);
  const count = asksCount
    ? bestMatch(
        counts.filter(({ direction }) => (direction === "rows" ? ROWS : STITCHES).test(heading)),
        heading,
      )
    : null;
  if (asksCount) return count === null ? null : { kind: "count", id: count.id };
  const measurement = bestMatch(measurements, heading);
  return measurement === null ? null : measured(measurement.id, heading, measurement.girth);
}

function bestMatch<Labelled extends { readonly label: string }>(
  items: readonly Labelled[],
  heading: string,
): Labelled | null {
  let found: Labelled | null = null;
  let bestScore = 0;
  for (const item of items) {
    const exact = normalised(item.label) === normalised(heading) ? 1 : 0;
    const share = shareOfWords(item.label, heading);
    const score = exact + share * (1 + distinctiveWords(item.label).size / 100);
    if (share + exact >= 0.6 && score > bestScore) [found, bestScore] = [item, score];
  }
  return found;
}

function otherNumbers(heading: string, { yarns }: PatternDocument): ColumnChoice {
  if (HOURS.test(heading)) return { kind: "hours" };
  const yarn =
    yarns.find(({ label }) => shareOfWords(label, heading) === 1) ?? (yarns.length === 1 ? yarns[0] : undefined);
  if (yarn !== undefined && YARN.test(heading)) return { kind: "yarn", id: yarn.id };
  return { kind: "leave out" };
}

function measured(id: string, heading: string, girth: boolean | undefined): ColumnChoice {
  return {
    kind: "measurement",
    id,
    unit: "cm",
    flat: girth === true && /\bflat\b|\bhalf\b/i.test(heading) && !/doubled/i.test(heading),
  };
}

function mostlyNumbers({ answers }: HeadedColumn): boolean {
  return answers.filter(looksNumeric).length >= answers.length / 2;
}

function mentionsMillimetres({ answers }: HeadedColumn): boolean {
  return answers.some((answer) => /\d\s*mm\b/i.test(answer));
}
