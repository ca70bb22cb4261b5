import type { Measurement, PatternDocument } from "@/engine/pattern";
import type { ComparedMeasurement, Consistency } from "@/engine/results";
import type { Drifts } from "./drift-words";
import type { TesterParts } from "./schema";

/** How a number stands to what chance makes: within what one in twenty passes, beyond that, or beyond one in a hundred. */
export type Standing = ComparedMeasurement["standing"];

/** One measurement of a tester beside the other testers'; h and k are Mandel's. */
export interface Comparison extends ComparedMeasurement {
  readonly measurement: Measurement;
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
  /** How many testers there are on all pages. */
  readonly testers: number;
  /** Names of those who stand out from the others, of all of them. */
  readonly standOut: readonly { readonly tester: string; readonly name: string }[];
}

export type Limits = NonNullable<Consistency["limits"]>;

interface ConsistencyGiven {
  readonly pattern: PatternDocument;
  readonly consistency: Consistency;
  /** Those on this page. */
  readonly rows: readonly TesterParts<"testers">[];
  readonly testers: number;
  readonly names: ReadonlyMap<string, string>;
}

/** Testers beside each other: their drifts, and each of their measurements against the others'. */
export function testerBoard({ pattern, consistency, rows, testers, names }: ConsistencyGiven): TesterBoard {
  const { limits, furthest, standOut } = consistency;
  const labels = new Map(pattern.sizes.map(({ id, label }) => [id, label]));
  return {
    rows: rows.map(({ comparisons, size, ...row }) => ({
      ...row,
      size: labels.get(size) ?? size,
      comparisons: comparisons.flatMap((comparison, at) => {
        const measurement = pattern.measurements[at];
        return measurement === undefined ? [] : [{ measurement, ...comparison }];
      }),
    })),
    measurements: pattern.measurements,
    limits,
    reach: 0.3 + Math.max(limits?.rare ?? 0, furthest),
    testers,
    standOut: standOut.map((tester) => ({ tester, name: names.get(tester) ?? tester })),
  };
}
