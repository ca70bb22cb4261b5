import {
  flatInCentimetres,
  implausibleReadings,
  neighbourSizeOutlier,
  PLAUSIBLE_SCORE,
  readingOutliers,
  scoredReadings,
  scoreOf,
  swatchOutliers,
  type EntryError,
  type ScoredReading,
} from "../gaps";
import { missingGrading, ownValue, type Tester } from "../pattern";
import { indexPattern, type PatternIndex } from "../prediction";
import { fieldOf } from "./fields";
import type { ReadingQuestion, ReadReport, ReportContext } from "./report-context";
import { LAID_FLAT } from "./read-typed-readings";
import { swatchQuestions } from "./swatch-questions";
import { toolQuestions } from "./tool-questions";
import { settledCounts, workedQuestions } from "./worked-questions";
import { yarnQuestions } from "./yarn-questions";

/**
 * Entries so far from what is expected, before any model is fitted, that the tester is asked whether they are correct.
 *
 * Swatches and counts are checked first: one that looks like an entry error does not count towards what the readings should be. A
 * reading taken unwashed is checked too, one of a measurement that was changed on purpose is not.
 *
 * @param read the report from `readReport`; answers are among its typed texts.
 * @returns questions about swatches, counts, readings and yarn, in the report's order; none about what the tester confirmed, and none
 *   where the pattern's grading is incomplete.
 * @see docs/method.md#outliers.
 */
export function readingQuestions(read: ReadReport, context: ReportContext): ReadingQuestion[] {
  if (missingGrading(context.pattern).length > 0) return [];
  const index = indexPattern(context.pattern);
  const tester = answeredTester(read);
  const suspects = swatchOutliers(index.fabrics, tester);
  const aside = new Set(suspects.filter(({ suspect }) => suspect.setAside).map(({ index }) => index));
  const settled: Tester = {
    ...tester,
    worked: settledCounts(read, context),
    swatches: tester.swatches.map((swatch, index) =>
      aside.has(index) ? { ...swatch, decision: "set-aside" } : swatch,
    ),
  };
  return [
    ...toolQuestions(read, context),
    ...swatchQuestions(read, { suspects, context }),
    ...workedQuestions(read, context),
    ...readingMessages(read, { index, tester: settled, context }),
    ...yarnQuestions(read, { index, tester: settled }),
  ];
}

/** The report as a tester's entry, with confirmed items marked as decided. */
function answeredTester({ report, typed }: ReadReport): Tester {
  const answered = <Item extends object>(part: "swatches" | "yarn", items: readonly Item[]) =>
    items.map((item, index) =>
      ownValue(typed, `${part}[${index}].kept`) ? { ...item, decision: "keep" as const } : item,
    );
  return {
    ...report,
    id: "tester",
    swatches: answered("swatches", report.swatches),
    readings: report.readings.map(({ state: _state, ...reading }) => reading),
    yarn: answered("yarn", report.yarn),
  };
}

interface QuestionContext {
  readonly index: PatternIndex;
  readonly tester: Tester;
  readonly context: ReportContext;
}

function readingMessages(read: ReadReport, { index, tester, context }: QuestionContext): ReadingQuestion[] {
  const scored = scoredReadings(index, tester);
  const isDoubled = (position: number) =>
    ownValue(read.typed, `readings[${position}].cm`)?.endsWith(LAID_FLAT) === true;
  return askedReadings(index, { tester, scored }).flatMap(({ reading, expectedCm, evidence, ...found }) => {
    const key = read.keys.readings[reading.index];
    const isKept = ownValue(read.typed, `readings[${reading.index}].kept`) !== undefined;
    if (key === undefined || expectedCm <= 0 || isKept) return [];
    const slip = found.slip ?? flatInOtherUnit(reading, expectedCm, context);
    const message =
      evidence === null || slip !== null
        ? readingMessage(slip, { expected: context.formatLength(expectedCm), isDoubled: isDoubled(reading.index) })
        : implausibleMessage(reading.cm, expectedCm, { isAlone: evidence === "gauge" });
    const field = (part: "value" | "kept") => fieldOf.reading(reading.measurement, key, part);
    return [{ field: field("value"), keptField: field("kept"), slip, message }];
  });
}

function flatInOtherUnit({ girth, cm, expectation }: ScoredReading, expectedCm: number, { unit }: ReportContext) {
  if (!girth || unit !== "in") return null;
  const score = scoreOf(flatInCentimetres(cm), { cm: expectedCm, sdCm: expectation.sdCm });
  return Math.abs(score) <= PLAUSIBLE_SCORE ? "cm-and-flat" : null;
}

interface AskedReading {
  readonly reading: ScoredReading;
  readonly expectedCm: number;
  readonly slip: EntryError | null;
  /** What makes it implausible; null for an outlier. */
  readonly evidence: "gauge" | "gauge and others" | null;
}

/** Outliers; the furthest of readings that fit a neighbouring size; readings that are implausible beside the others. */
function askedReadings(
  index: PatternIndex,
  { tester, scored }: { readonly tester: Tester; readonly scored: readonly ScoredReading[] },
): AskedReading[] {
  const suspects = readingOutliers(index, tester, new Map());
  const outliers = suspects.flatMap(({ index: position, suspect: { slip } }) => {
    const reading = scored.find((each) => each.index === position);
    return reading ? [{ reading, expectedCm: reading.expectation.cm, slip, evidence: null }] : [];
  });
  const neighbour = suspects.length > 0 ? undefined : neighbourSizeOutlier(index, tester);
  const fitting = scored.find(({ measurement, cm }) => measurement === neighbour?.id && cm === neighbour.value);
  if (fitting)
    return [{ reading: fitting, expectedCm: fitting.expectation.cm, slip: "neighbour-size", evidence: null }];
  const others = scored.filter((reading) => !outliers.some((outlier) => outlier.reading === reading));
  const evidence = others.length === 1 ? ("gauge" as const) : ("gauge and others" as const);
  const implausible = implausibleReadings(others).map((found) => ({ ...found, evidence }));
  return [...outliers, ...implausible].toSorted((left, right) => left.reading.index - right.reading.index);
}

interface Expected {
  readonly expected: string;
  /** It was typed as the width laid flat, and doubled by Sizewright. */
  readonly isDoubled: boolean;
}

/** The expected length is left out, so that a reading of a wrong pattern is not corrected towards what the pattern says. */
function implausibleMessage(cm: number, expectedCm: number, { isAlone }: { readonly isAlone: boolean }): string {
  const amount = cm > expectedCm ? "more" : "less";
  const evidence = isAlone ? "your gauge suggests" : "your gauge and your other measurements suggest";
  return `That is ${amount} than ${evidence}. Please measure once more, or say that it is right.`;
}

function readingMessage(slip: ReadingQuestion["slip"], { expected, isDoubled }: Expected): string {
  switch (slip) {
    case "half-girth":
      return `That is half of what we would expect here (about ${expected}): was it laid flat and not doubled?`;
    case "twice-girth":
      return isDoubled
        ? `Doubled, that is twice what we would expect here (about ${expected}): did you measure all around?`
        : `That is twice what we would expect here (about ${expected}): was it doubled twice?`;
    case "cm-and-flat":
      return `Is that in centimetres, laid flat and not doubled? We would expect about ${expected}.`;
    case "inches-and-flat":
      return `Is that in inches, laid flat and not doubled? We would expect about ${expected}.`;
    case "inches-as-cm":
      return `Is that in inches? We would expect about ${expected}.`;
    case "cm-as-inches":
      return `Is that in centimetres? We would expect about ${expected}.`;
    case "decimal":
      return `Is the decimal point in the right place? We would expect about ${expected}.`;
    case "swapped-letters":
      return `Is this the number of another measurement? We would expect about ${expected} here.`;
    case "neighbour-size":
      return `Your measurements fit the size next to yours better. Which size’s numbers did you follow? We would expect about ${expected} here.`;
    default:
      return `That is far from what your gauge gives (about ${expected}). Please measure once more, or say that it is right.`;
  }
}
