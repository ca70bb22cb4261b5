import type { Measurement, PatternDocument } from "../pattern";
import type { LengthUnit } from "../units";
import { normalised, splitLetter, unitNamed } from "./label-text";
import { namesPart } from "./part-names";
import { readTableLength } from "./read-cell";
import type { ColumnChoice } from "./report-choices";

/** An answer, the unit that its tester says, and the pattern's own numbers in its tester's size, cm by measurement. */
export interface SizedAnswer {
  readonly text: string;
  readonly unit: LengthUnit | null;
  readonly published: ReadonlyMap<string, number> | null;
}

interface Guess {
  readonly choice: Extract<ColumnChoice, { kind: "measurement" }>;
  /** Found by the measurement's letter. */
  readonly isLettered: boolean;
}

interface Headed {
  readonly heading: string;
  readonly answers: readonly SizedAnswer[];
}

/** Relative difference up to which a ratio to the pattern's number is that of a way of measuring. */
const MAX_RATIO_ERROR = 0.12;
/** Words and numbers together decide; either alone must be good. */
const MIN_SCORE = 0.6;
const MIN_WORDS = 0.35;
const ALONE = /^(?:measurement\s+)?\(?([A-Za-z]\d{0,2})\)?[.:]?(?:\s*[,(]?\s*(?:in\s+)?(?:cm|inches|in)\)?)?$/i;
const BY_NAME = /\bmeasurement ([A-Za-z]\d{0,2})\b/i;
const BEHIND = /\S\s*\(([A-Z]\d{0,2})\)$/u;
const BEFORE_WORDS = /^([A-Z]\d{0,2})\s+\p{L}/u;

/**
 * The measurement that a column of lengths holds, its unit, and whether girths were laid flat: by its letter, else by the
 * words of its heading together with how its answers compare with the pattern's numbers in each tester's size.
 */
export function guessMeasured(column: Headed, { measurements }: PatternDocument): Guess | null {
  const lettered = byLetter(column.heading, measurements);
  if (lettered !== undefined) return { choice: choiceOf(column, lettered), isLettered: true };
  let found: Measurement | null = null;
  let bestScore = MIN_SCORE;
  for (const measurement of measurements) {
    const exact = normalised(measurement.label) === normalised(column.heading) ? 1 : 0;
    const words = namesPart(measurement.label, column.heading);
    if (words + exact < MIN_WORDS) continue;
    const score = words + exact + numbersScore(column, measurement);
    if (score > bestScore) [found, bestScore] = [measurement, score];
  }
  return found === null ? null : { choice: choiceOf(column, found), isLettered: false };
}

function byLetter(heading: string, measurements: readonly Measurement[]): Measurement | undefined {
  const found = (letter: string | undefined) =>
    letter === undefined || letter === ""
      ? undefined
      : measurements.find((measurement) => measurement.letter.toUpperCase() === letter.toUpperCase());
  const sure = found(
    splitLetter(heading).letter || [ALONE, BY_NAME, BEHIND].map((way) => way.exec(heading)?.[1]).find(Boolean),
  );
  if (sure !== undefined) return sure;
  const beforeWords = found(BEFORE_WORDS.exec(heading)?.[1]);
  return beforeWords !== undefined && namesPart(beforeWords.label, heading) > MIN_WORDS ? beforeWords : undefined;
}

interface Way {
  readonly unit: LengthUnit;
  readonly flat: boolean;
}

const WAYS: readonly Way[] = [
  { unit: "cm", flat: false },
  { unit: "in", flat: false },
  { unit: "cm", flat: true },
  { unit: "in", flat: true },
];

/** How a column was measured, if most of its answers then come near the pattern's numbers. */
function wayOf({ answers }: Headed, measurement: Measurement): { readonly way: Way; readonly share: number } | null {
  const ratiosIn = (unit: LengthUnit) =>
    answers.flatMap(({ text, unit: said, published }) => {
      const designCm = published?.get(measurement.id);
      const read = readTableLength(text, said ?? unit);
      return designCm !== undefined && designCm > 0 && read.ok ? [read.value / designCm] : [];
    });
  const tried = WAYS.filter(({ flat }) => !flat || measurement.girth === true).map((way) => {
    const ratios = ratiosIn(way.unit).map((ratio) => ratio * (way.flat ? 2 : 1));
    const near = ratios.filter((ratio) => Math.abs(ratio - 1) <= MAX_RATIO_ERROR).length;
    return { way, share: ratios.length === 0 ? Number.NaN : near / ratios.length };
  });
  const known = tried.filter(({ share }) => !Number.isNaN(share)).toSorted((a, b) => b.share - a.share);
  return known[0] ?? null;
}

function numbersScore(column: Headed, measurement: Measurement): number {
  const way = wayOf(column, measurement);
  if (way === null) return 0;
  return way.share >= 0.6 ? 0.5 : way.share < 0.3 && column.answers.length > 1 ? -0.4 : 0;
}

function choiceOf(column: Headed, measurement: Measurement): Guess["choice"] {
  const { heading } = column;
  const way = wayOf(column, measurement);
  const isFlatNamed =
    measurement.girth === true && /\bflat\b|\bhalf\b/i.test(heading) && !/doubled|around/i.test(heading);
  const byNumbers = way !== null && way.share >= 0.5 ? way.way : null;
  return {
    kind: "measurement",
    id: measurement.id,
    unit: unitNamed(heading) ?? byNumbers?.unit ?? "cm",
    flat: byNumbers?.flat ?? isFlatNamed,
  };
}
