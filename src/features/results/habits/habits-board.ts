import type { Measurement, PatternDocument } from "@/engine/pattern";
import type { ComparedMeasurement, Consistency } from "@/engine/results";
import type { Drifts } from "../gaps/drift-copy";
import type { TesterPlace } from "../data";
import type { TesterParts } from "../schema";

/** How unusual a number is: common, rarer than one in twenty, or rarer than one in a hundred. */
export type Standing = ComparedMeasurement["standing"];

/** One measurement of a tester compared with the other testers'; h and k are Mandel's. */
export interface Comparison extends ComparedMeasurement {
  readonly measurement: Measurement;
}

export interface TesterRow extends Drifts {
  readonly tester: string;
  readonly name: string;
  /** The size's label. */
  readonly size: string;
  readonly comparisons: readonly Comparison[];
  /** Chance that all of their measurements are wrong, where they probably are. */
  readonly wrongChance: number | null;
}

/** The content of the page of measuring habits. */
export interface TesterBoard {
  readonly rows: readonly TesterRow[];
  readonly measurements: readonly Measurement[];
  /** Limits of h for the number of testers of the most reported measurement; null where nobody can be compared. */
  readonly limits: Limits | null;
  /** How far the picture reaches on either side. */
  readonly reach: number;
  /** How many testers there are on all pages. */
  readonly testers: number;
  /** Who stands out from the others: the first few, and how many there are. */
  readonly standOut: { readonly testers: readonly TesterPlace[]; readonly all: number };
}

type Limits = NonNullable<Consistency["limits"]>;

interface ConsistencyGiven {
  readonly pattern: PatternDocument;
  readonly consistency: Consistency;
  /** Those on this page. */
  readonly rows: readonly TesterParts<"testers">[];
  readonly testers: number;
  /** The positions of `testersToPlace`. */
  readonly places: readonly TesterPlace[];
}

/** At most this many of those who stand out are named above the list. */
const MOST_STANDING_OUT = 8;

/** Testers whom the page names above its list. */
export function testersToPlace({ standOut }: Consistency): string[] {
  return standOut.slice(0, MOST_STANDING_OUT);
}

/** Testers compared with each other: their drifts, and each of their measurements. */
export function testerBoard({ pattern, consistency, rows, testers, places }: ConsistencyGiven): TesterBoard {
  const { limits, furthest, standOut, doubted } = consistency;
  const wrongChances = new Map(doubted.map(({ tester, chance }) => [tester, chance]));
  const labels = new Map(pattern.sizes.map(({ id, label }) => [id, label]));
  return {
    rows: rows.map(({ comparisons, size, ...row }) => ({
      ...row,
      size: labels.get(size) ?? size,
      wrongChance: wrongChances.get(row.tester) ?? null,
      comparisons: comparisons.flatMap((comparison, index) => {
        const measurement = pattern.measurements[index];
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
