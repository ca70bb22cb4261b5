import { neighbourSizeSuspect, readingSuspects, scoredReadings, swatchSuspects, type Slip } from "../gaps";
import { missingGrading, own, type Tester } from "../pattern";
import { indexPattern, type PatternIndex } from "../prediction";
import { fieldOf } from "./fields";
import type { ReadingQuestion } from "./question";
import type { ReadReport, ReportContext } from "./report-context";
import { swatchQuestions } from "./swatch-questions";
import { yarnQuestions } from "./yarn-questions";

/**
 * What lies so far off, before any fit, that she is asked at entry whether it is right.
 *
 * Her swatches are asked about first; one that looks like a slip does not count for what her readings should come to. A
 * reading taken unwashed is asked about too, one of a measurement that she changed on purpose is not.
 *
 * @param read her report from `readReport`; answers stand in its typed texts.
 * @returns questions about swatches, readings and yarn, in the report's order; none about what she said is right, and none
 *   where the pattern misses numbers.
 * @see docs/method.md#outliers.
 */
export function readingQuestions(read: ReadReport, context: ReportContext): ReadingQuestion[] {
  if (missingGrading(context.pattern).length > 0) return [];
  const index = indexPattern(context.pattern);
  const tester = answeredTester(read);
  const suspects = swatchSuspects(index.fabrics, tester);
  const aside = new Set(suspects.filter(({ suspect }) => suspect.setAside).map(({ at }) => at));
  const settled: Tester = {
    ...tester,
    swatches: tester.swatches.map((swatch, at) => (aside.has(at) ? { ...swatch, decision: "set-aside" } : swatch)),
  };
  return [
    ...swatchQuestions(read, { suspects, context }),
    ...questionsOfReadings(read, { index, tester: settled, context }),
    ...yarnQuestions(read, { index, tester: settled }),
  ];
}

/** Her report as a tester whose answers are decisions. */
function answeredTester({ report, typed }: ReadReport): Tester {
  const answered = <Item extends object>(part: "swatches" | "yarn", items: readonly Item[]) =>
    items.map((item, at) => (own(typed, `${part}[${at}].kept`) ? { ...item, decision: "keep" as const } : item));
  return {
    ...report,
    id: "she",
    swatches: answered("swatches", report.swatches),
    readings: report.readings.map(({ state: _state, ...reading }) => reading),
    yarn: answered("yarn", report.yarn),
  };
}

interface Asking {
  readonly index: PatternIndex;
  readonly tester: Tester;
  readonly context: ReportContext;
}

function questionsOfReadings(read: ReadReport, { index, tester, context }: Asking): ReadingQuestion[] {
  const expected = new Map(scoredReadings(index, tester).map(({ at, expectation }) => [at, expectation.cm]));
  const suspects = readingSuspects(index, tester, new Map());
  const neighbour = suspects.length > 0 ? undefined : neighbourSizeSuspect(index, tester);
  const at = tester.readings.findIndex(
    ({ measurement, cm }) => measurement === neighbour?.id && cm === neighbour.value,
  );
  const all = neighbour ? [...suspects, { at, suspect: neighbour }] : suspects;
  return all.flatMap(({ at: position, suspect }) => {
    const expectedCm = expected.get(position);
    const key = read.keys.readings[position];
    const isKept = own(read.typed, `readings[${position}].kept`) !== undefined;
    if (key === undefined || expectedCm === undefined || expectedCm <= 0 || isKept) return [];
    const slip = suspect.slip;
    return [
      {
        field: fieldOf.reading(suspect.id, key, "value"),
        keptField: fieldOf.reading(suspect.id, key, "kept"),
        slip,
        says: readingWords(slip, context.lengthWords(expectedCm)),
      },
    ];
  });
}

function readingWords(slip: Slip | null, expected: string): string {
  switch (slip) {
    case "half-girth":
      return `That is half of what we would expect here (about ${expected}): was it laid flat and not doubled?`;
    case "twice-girth":
      return `That is twice what we would expect here (about ${expected}): was it doubled twice?`;
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
