import type { PatternDocument } from "../pattern";
import { distinctiveWords, normalised, shareOfWords } from "./label-text";
import { guessMeasured, type SizedAnswer } from "./guess-measured";
import { namesPart } from "./part-names";
import { looksNumeric, readsAsYesOrNo } from "./read-cell";
import { readFit } from "./read-fit";
import { readGaugeText } from "./read-gauge-text";
import { readToolSize } from "./read-tool-size";
import { namedUnit } from "./read-unit";
import { yarnUnitNamed } from "./read-yarn-amount";
import type { ColumnChoice } from "./report-choices";
import { matchSize } from "./size-names";
import { unitNamed } from "./label-text";

/** A column's heading and its non-empty answers. */
export interface HeadedColumn {
  readonly heading: string;
  readonly answers: readonly SizedAnswer[];
}

const DATE = /time ?stamp|zeitstempel|horodat|\bdate\b|\bdatum\b|submitted|start(?:ed)? (?:time|on)|completion time/i;
const CONTACT = /e-?mail|address\b|\bphone\b|\binstagram\b|\bwebsite\b|\blink\b|\burl\b/i;
const CONSENT = /photo|picture|consent|would you|do you agree|may (?:i|we)\b|permission|newsletter|test again/i;
const COMMENT =
  /comment|\bnotes?\b|anything|feedback|unclear|bemerk|anmerk|kommentar|remark|thought|tell (?:me|us)|suggest|\bchanged?\b|mistake|\berrors?\b|trouble|typo|modif|difficult|problem|opinion|impression/i;
const SWATCH = /swatch|gauge|tension|maschenprobe|échantillon/i;
const STITCHES = /\bst(?:s|itch(?:es)?)?\b|\bchains?\b|\bmaschen\b|\bmailles\b/i;
const ROWS = /\brows?\b|\brounds?\b|\brnds?\b|\breihen\b|\brunden\b|\brangs\b/i;
const OVER_WIDTH = /\bover\b|\b(?:\d+)?10\s*cm\b|\b4\s*(?:in|")/i;
const WASHED = /wash|block|gewaschen/i;
const TOOL = /\bhook|\bneedle|\btool|nadel/i;
const HOURS = /\bhours?\b|how long did it take|\bstunden\b|time (?:spent|taken)/i;
const YARN =
  /\byarn|\bgrams?\b|\bweigh|\bused\b|\bgarn|\bwolle\b|verbrauch|\bskeins?\b|\bballs?\b|\byardage\b|\bmet(?:re|er)s\b/i;
const YARN_NAME = /\b(?:which|what|name of (?:the )?) ?yarn\b|\byarn (?:name|brand|used)\b|\bgarn\b/i;
const NAME = /name\b|^testers?$|^who\b|who are you|^testerin$|^(?:test)?knitter$/i;
const HANDLE = /\bhandle\b|\bprofile\b|\b(?:user|screen|account) ?name\b|\baccount\b/i;
const FIT = /\bfit(?:s|ting)?\b|passform|\bsitzt\b|\bpasst\b/i;

/** What a column that is not imported holds. */
export function leftOutAs({ heading, answers }: HeadedColumn): "date" | "contact" | "left-out" {
  if (DATE.test(heading)) return "date";
  return CONTACT.test(heading) || isHandle({ heading, answers }) ? "contact" : "left-out";
}

/** Guesses the content of one column of a form's table. */
export function guessColumn(column: HeadedColumn, pattern: PatternDocument): ColumnChoice {
  const { heading } = column;
  if (isSize(column, pattern)) return { kind: "size" };
  if (isUnit(column)) return { kind: "unit" };
  const isNumbers = mostly(column, looksNumeric);
  const measured = isNumbers || column.answers.length === 0 ? guessMeasured(column, pattern) : null;
  if (measured?.isLettered) return measured.choice;
  if (DATE.test(heading) || CONTACT.test(heading) || isHandle(column)) return { kind: "leave out" };
  const fit = fitColumn(column, pattern);
  if (fit !== null) return fit;
  if (CONSENT.test(heading)) return { kind: "leave out" };
  if (NAME.test(heading) && !YARN_NAME.test(heading)) return { kind: "name" };
  if (WASHED.test(heading) && mostly(column, readsAsYesOrNo)) return { kind: "washed" };
  const swatch = swatchColumn(column, pattern, isNumbers);
  if (swatch !== null) return swatch;
  if (!isNumbers) return textColumn(column, pattern);
  return countColumn(heading, pattern) ?? measured?.choice ?? otherNumbers(column, pattern);
}

/** True if a column asks for a user name on some network, by its heading or by the `@` before most answers. */
export function isHandle({ heading, answers }: HeadedColumn): boolean {
  const marked = answers.filter(({ text }) => /^\s*@[\p{L}\d_]/u.test(text)).length;
  return HANDLE.test(heading) || (marked > 0 && marked * 2 >= answers.length);
}

function mostly({ answers }: HeadedColumn, test: (text: string) => boolean, share = 0.5): boolean {
  return answers.filter(({ text }) => test(text)).length >= answers.length * share;
}

export function isSize(column: HeadedColumn, { sizes }: PatternDocument): boolean {
  const { heading, answers } = column;
  const isOther =
    TOOL.test(heading) || SWATCH.test(heading) || /\bcup\b|\busual|\bnormal|\bsecond choice/i.test(heading);
  if (isOther) return false;
  const asked = /\bsizes?\b|^sz\.?$|gr(?:ö|oe)(?:ß|ss)e|\btaille\b|\btalla\b|\bmaat\b/i.test(heading);
  if (answers.length === 0) return asked;
  if (!asked && mostly(column, looksNumeric, 0.95)) return false;
  const fits = (text: string) => text.length <= LONGEST_SIZE && matchSize(text, sizes).ok;
  return mostly(column, fits, asked ? 0.5 : 0.95) && (asked || answers.some(({ text }) => !looksNumeric(text)));
}

const LONGEST_SIZE = 60;

export function isUnit(column: HeadedColumn): boolean {
  return column.answers.length > 0 && mostly(column, isUnitAlone, 0.8);
}

function isUnitAlone(text: string): boolean {
  return namedUnit(text) !== null && !/\d/.test(text) && text.length <= LONGEST_UNIT;
}

const LONGEST_UNIT = 14;

function fitColumn(column: HeadedColumn, { bodyMeasurements = [] }: PatternDocument): ColumnChoice | null {
  if (!FIT.test(column.heading)) return null;
  const isOneToFive =
    /\b1\b.*\b5\b/.test(column.heading) || column.answers.some(({ text }) => /^[345]\b/.test(text.trim()));
  if (!mostly(column, (text) => readFit(text, isOneToFive) !== null)) return null;
  const area = best(bodyMeasurements, ({ label }) => namesPart(label, column.heading));
  return area === null ? null : { kind: "fit", id: area.id, isOneToFive };
}

function swatchColumn(column: HeadedColumn, pattern: PatternDocument, isNumbers: boolean): ColumnChoice | null {
  const { heading } = column;
  const fabric = (best(pattern.fabrics, ({ label }) => shareOfWords(label, heading)) ?? pattern.fabrics[0])?.id ?? "";
  const [asksStitches, asksRows] = [STITCHES.test(heading), ROWS.test(heading)];
  const isTool = (text: string) => readToolSize(text, pattern.craft).ok;
  if (TOOL.test(heading) && !asksStitches && !asksRows && mostly(column, isTool)) return { kind: "tool", fabric };
  if (!SWATCH.test(heading) && !OVER_WIDTH.test(heading)) return null;
  if (WASHED.test(heading) && !isNumbers && mostly(column, readsAsYesOrNo)) return null;
  const isBoth = (text: string) => {
    const { stitches, rows } = readGaugeText(text);
    return stitches !== undefined && rows !== undefined;
  };
  if (column.answers.length > 0 && mostly(column, isBoth)) return { kind: "swatch", fabric };
  if (!isNumbers) return null;
  const isLength = /\bhow (?:wide|tall|high)\b|\bmeasured over\b/i.test(heading);
  if (asksStitches !== asksRows && !isLength) return { kind: asksStitches ? "swatch stitches" : "swatch rows", fabric };
  const unit = unitNamed(heading) ?? "cm";
  if (/wid|across|breit/i.test(heading)) return { kind: "swatch across", fabric, unit };
  if (/height|tall|long|length|along|hoch|höhe/i.test(heading)) return { kind: "swatch along", fabric, unit };
  return SWATCH.test(heading) && /over|per|size|measured|über/i.test(heading)
    ? { kind: "swatch over", fabric, unit }
    : null;
}

function countColumn(heading: string, { counts }: PatternDocument): ColumnChoice | null {
  const [asksStitches, asksRows] = [STITCHES.test(heading), ROWS.test(heading)];
  if (!asksStitches && !asksRows) return null;
  const asked = counts.filter(({ direction }) => (direction === "rows" ? asksRows : asksStitches));
  const found = best(asked, ({ label }) =>
    normalised(label) === normalised(heading) ? 2 : Math.max(shareOfWords(label, heading), namesPart(label, heading)),
  );
  return found === null ? { kind: "leave out" } : { kind: "count", id: found.id };
}

function otherNumbers({ heading }: HeadedColumn, { yarns }: PatternDocument): ColumnChoice {
  if (HOURS.test(heading)) return { kind: "hours" };
  const named = best(yarns, ({ label }) => shareOfWords(label, heading));
  const yarn = named ?? (yarns.length === 1 ? yarns[0] : undefined);
  const isWhole = yarn !== undefined && shareOfWords(yarn.label, heading) === 1;
  if (yarn !== undefined && (isWhole || YARN.test(heading)))
    return { kind: "yarn", id: yarn.id, amountIn: yarnUnitNamed(heading) };
  return COMMENT.test(heading) ? { kind: "comment" } : { kind: "leave out" };
}

/** Words go to the designer: as the yarn's name where it is asked for, else as a comment. */
function textColumn(column: HeadedColumn, { yarns }: PatternDocument): ColumnChoice {
  const { heading, answers } = column;
  if (HOURS.test(heading) && answers.some(({ text }) => /\d/.test(text))) return { kind: "hours" };
  const named = best(yarns, ({ label }) => shareOfWords(label, heading)) ?? (yarns.length === 1 ? yarns[0] : undefined);
  if (YARN_NAME.test(heading) && named !== undefined) return { kind: "yarn name", id: named.id };
  const isProse = mostly(column, (text) => distinctiveWords(text).size >= 3, 0.4) && answers.length > 0;
  return COMMENT.test(heading) || FIT.test(heading) || isProse ? { kind: "comment" } : { kind: "leave out" };
}

/** The item with the highest score from a half up; null where two are equal. */
function best<Item>(items: readonly Item[], score: (item: Item) => number): Item | null {
  const scored = items.map((item) => ({ item, points: score(item) })).toSorted((a, b) => b.points - a.points);
  const [first, second] = scored;
  return first === undefined || first.points < 0.5 || first.points === second?.points ? null : first.item;
}
