import type { Measurement, PatternDocument } from "@/engine/pattern";
import type { ComparedMeasurement, Consistency } from "@/engine/results";
import type { Drifts } from "./drift-words";
import type { TesterPlace } from "./data";
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
  /** Who stands out from the others: the first few, and how many they are. */
  readonly standOut: { readonly testers: readonly TesterPlace[]; readonly all: number };
}

export type Limits = NonNullable<Consistency["limits"]>;

interface ConsistencyGiven {
  readonly pattern: PatternDocument;
  readonly consistency: Consistency;
  /** Those on this page. */
  readonly rows: readonly TesterParts<"testers">[];
  readonly testers: number;
  /** Where those of `testersToPlace` stand. */
  readonly places: readonly TesterPlace[];
}

/** Of those who stand out so many are named above the list. */
const MOST_STANDING_OUT = 8;

/** Testers whom the page names above its list. */
export function testersToPlace({ standOut }: Consistency): string[] {
  return standOut.slice(0, MOST_STANDING_OUT);
}

/** Testers beside each other: their drifts, and each of their measurements against the others'. */
export function testerBoard({ pattern, consistency, rows, testers, places }: ConsistencyGiven): TesterBoard {
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
    standOut: { testers: places, all: standOut.length },
  };
}
