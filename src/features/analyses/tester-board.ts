import { mandelHLimit, mandelKLimit } from "@/engine/consistency";
import { countedReadings, settleCall, type TesterFinding } from "@/engine/gaps";
import type { Measurement } from "@/engine/pattern";
import type { Drifts } from "./drift-words";
import type { LoadedAnalysis } from "./loaders";

/** How a number stands to what chance makes: within what one in twenty passes, beyond that, or beyond one in a hundred. */
export type Standing = "usual" | "unusual" | "rare";

/** One measurement of a tester beside the other testers'. */
export interface Comparison {
  readonly measurement: Measurement;
  /** Mandel's h; null where too few testers read it or she did not. */
  readonly h: number | null;
  readonly standing: Standing;
  /** Mandel's k; null where too few testers repeated it or she did not. */
  readonly k: number | null;
  readonly scatter: Standing;
}

export interface TesterRow extends Drifts {
  readonly tester: string;
  readonly name: string;
  /** The size's label. */
  readonly size: string;
  readonly comparisons: readonly Comparison[];
}

/** The tester page's content. */
export interface TesterBoard {
  readonly rows: readonly TesterRow[];
  readonly measurements: readonly Measurement[];
  /** Limits of h for as many testers as read the most read measurement; null where nobody can be compared. */
  readonly limits: Limits | null;
  /** The picture reaches so far to either side. */
  readonly reach: number;
}

export interface Limits {
  readonly testers: number;
  readonly unusual: number;
  readonly rare: number;
}

const UNUSUAL = 0.05;
const RARE = 0.01;

/** Every tester beside the others: her drifts, and each of her measurements against theirs. */
export function testerBoard({ document, output, names }: LoadedAnalysis): TesterBoard {
  const { sizes, measurements } = document.pattern;
  const labels = new Map(sizes.map(({ id, label }) => [id, label]));
  const testers = new Map(document.testers.map((tester) => [tester.id, tester]));
  const limitsOf = comparisonLimits({ document, output, names });
  const rows = output.testers.map((finding) => {
    const size = testers.get(finding.tester)?.size ?? "";
    return {
      tester: finding.tester,
      name: names.get(finding.tester) ?? finding.tester,
      size: labels.get(size) ?? size,
      driftAcross: finding.driftAcross,
      driftAlong: finding.driftAlong,
      comparisons: measurements.map((measurement, at) => comparison(measurement, finding, at, limitsOf)),
    };
  });
  const most = Math.max(0, ...measurements.map((_, at) => limitsOf.testers(at)));
  const limits = most === 0 ? null : { testers: most, ...hLimits(most) };
  const furthest = rows.flatMap(({ comparisons }) => comparisons.map(({ h }) => Math.abs(h ?? 0)));
  return { rows, measurements, limits, reach: 0.3 + Math.max(limits?.rare ?? 0, ...furthest) };
}

interface ComparisonLimits {
  /** How many testers a measurement compares. */
  readonly testers: (measurement: number) => number;
  readonly ofK: (tester: string, measurement: number, chance: number) => number;
}

function comparisonLimits({ document, output }: LoadedAnalysis): ComparisonLimits {
  const told = (at: number, key: "h" | "k") =>
    output.testers.filter(({ measurements }) => (measurements[at]?.[key] ?? null) !== null).length;
  const compared = document.pattern.measurements.map((_, at) => told(at, "h"));
  const repeated = document.pattern.measurements.map((_, at) => told(at, "k"));
  const order = new Map(document.pattern.measurements.map(({ id }, at) => [id, at]));
  const readings = new Map(
    countedReadings(settleCall(document).call).map((counted) => [
      `${counted.tester.id} ${order.get(counted.measurement.id)}`,
      counted.readings.length,
    ]),
  );
  return {
    testers: (at) => compared[at] ?? 0,
    ofK: (tester, at, chance) => mandelKLimit(repeated[at] ?? 0, readings.get(`${tester} ${at}`) ?? 0, chance),
  };
}

function comparison(
  measurement: Measurement,
  { tester, measurements }: TesterFinding,
  at: number,
  limits: ComparisonLimits,
): Comparison {
  const h = measurements[at]?.h ?? null;
  const k = measurements[at]?.k ?? null;
  return {
    measurement,
    h,
    standing: h === null ? "usual" : standingOf(Math.abs(h), hLimits(limits.testers(at))),
    k,
    scatter:
      k === null
        ? "usual"
        : standingOf(k, { unusual: limits.ofK(tester, at, UNUSUAL), rare: limits.ofK(tester, at, RARE) }),
  };
}

function hLimits(testers: number) {
  return { unusual: mandelHLimit(testers, UNUSUAL), rare: mandelHLimit(testers, RARE) };
}

function standingOf(value: number, { unusual, rare }: { unusual: number; rare: number }): Standing {
  if (value > rare) return "rare";
  return value > unusual ? "unusual" : "usual";
}
