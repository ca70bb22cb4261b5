import { mandelHLimit, mandelKLimit } from "../consistency";
import { binomialUpperTail } from "../distributions";
import { isLikelyMistake, type CountedReading, type TesterFinding } from "../gaps";
import type { PatternDocument } from "../pattern";
import type { Consistency } from "./call-results-schema";
import type { ComparedMeasurement } from "./tester-results-schema";

const UNUSUAL = 0.05;
const RARE = 0.01;
/** With fewer measurements, all lying on one side is not significant. */
const MIN_TO_RUN = 6;
/** Smallest mean |h| that is reported. */
const MIN_MEAN = 0.5;
/** Significance level of the two-sided sign test. */
const MAX_CHANCE = 0.05;

export interface ComparedTester {
  readonly tester: string;
  readonly comparisons: readonly ComparedMeasurement[];
}

/**
 * Each tester's measurements beside the other testers', with how unusual each is.
 *
 * @param findings of `gaps`, one a tester.
 * @param counted the readings that count, one entry a tester and measurement.
 * @see ISO 5725-2:1994, 7.3.1, for Mandel's h and k and their limits.
 */
export function compareTesters(
  { measurements }: PatternDocument,
  findings: readonly TesterFinding[],
  counted: readonly CountedReading[],
): { readonly testers: readonly ComparedTester[]; readonly consistency: Consistency } {
  const compared = measurements.map((_, index) => countOf(findings, index, "h"));
  const repeated = measurements.map((_, index) => countOf(findings, index, "k"));
  // h is null below three testers, and its limits mean nothing there.
  const hLimits = compared.map((testers) => (testers === 0 ? null : limitsOfH(testers)));
  const repeats = new Map(
    counted.map((entry) => [keyOf(entry.tester.id, entry.measurement.id), entry.readings.length]),
  );
  const testers = findings.map(({ tester, measurements: found }) => ({
    tester,
    comparisons: measurements.map(({ id }, index): ComparedMeasurement => {
      const [h, k] = [found[index]?.h ?? null, found[index]?.k ?? null];
      const limitOfK = (chance: number) =>
        mandelKLimit(repeated[index] ?? 0, repeats.get(keyOf(tester, id)) ?? 0, chance);
      return {
        h,
        standing: standingOf(h === null ? 0 : Math.abs(h), hLimits[index] ?? null),
        k,
        scatter: k === null ? "usual" : standingOf(k, { unusual: limitOfK(UNUSUAL), rare: limitOfK(RARE) }),
      };
    }),
  }));
  const max = Math.max(0, ...compared);
  const doubted = findings.flatMap(({ tester, chance }) => (isLikelyMistake(chance) ? [{ tester, chance }] : []));
  return {
    testers,
    consistency: {
      limits: max === 0 ? null : { testers: max, ...limitsOfH(max) },
      furthest: testers.reduce(
        (far, { comparisons }) => comparisons.reduce((farthest, { h }) => Math.max(farthest, Math.abs(h ?? 0)), far),
        0,
      ),
      standOut: testers
        .filter((one) => standsOut(one) || doubted.some(({ tester }) => tester === one.tester))
        .map(({ tester }) => tester),
      doubted,
    },
  };
}

/** Whether significantly many measurements of a tester lie on one side of the others'; null if not. */
export function runsOneWay(
  comparisons: readonly Pick<ComparedMeasurement, "h">[],
): { readonly way: "large" | "small"; readonly run: number; readonly of: number } | null {
  const values = comparisons.flatMap(({ h }) => (h === null ? [] : [h]));
  const large = values.filter((h) => h > 0).length;
  const run = Math.max(large, values.length - large);
  const mean = values.reduce((sum, h) => sum + h, 0) / Math.max(1, values.length);
  if (values.length < MIN_TO_RUN || Math.abs(mean) < MIN_MEAN) return null;
  if (2 * binomialUpperTail(run, values.length, 0.5) > MAX_CHANCE) return null;
  return { way: large === run ? "large" : "small", run, of: values.length };
}

function standsOut({ comparisons }: ComparedTester): boolean {
  return (
    comparisons.some(({ standing, scatter }) => standing === "rare" || scatter === "rare") ||
    runsOneWay(comparisons) !== null
  );
}

function countOf(findings: readonly TesterFinding[], index: number, key: "h" | "k"): number {
  return findings.filter(({ measurements }) => (measurements[index]?.[key] ?? null) !== null).length;
}

function keyOf(tester: string, measurement: string): string {
  return `${tester} ${measurement}`;
}

function limitsOfH(testers: number) {
  return { unusual: mandelHLimit(testers, UNUSUAL), rare: mandelHLimit(testers, RARE) };
}

function standingOf(
  value: number,
  limits: { readonly unusual: number; readonly rare: number } | null,
): ComparedMeasurement["standing"] {
  if (limits === null || value <= limits.unusual) return "usual";
  return value > limits.rare ? "rare" : "unusual";
}
