export type Verdict = "holds" | "off" | "leaning" | "unsettled";

/** A tester, or one reading of theirs, without which something would not be said. */
export interface Carrier {
  readonly tester: string;
  /** Null where it takes all of the tester's readings. */
  readonly measurement: string | null;
}

/** One measurement in one size; all but `reports` are null where there is no information. */
export interface Cell {
  readonly size: string;
  readonly measurement: string;
  /** Testers with a counted reading. */
  readonly reports: number;
  readonly gapCm: number | null;
  readonly standardErrorCm: number | null;
  /** Bounds of the 90 % interval. */
  readonly lowCm: number | null;
  readonly highCm: number | null;
  readonly chanceOff: number | null;
  readonly verdict: Verdict | null;
  /** As many more testers of the size settle the verdict in four cases in five; null where it is settled, or where thirty do not. */
  readonly testersToSettle: number | null;
  /** Chance that three more settle it; null where it is settled, left out in results of before. */
  readonly chanceWithThree?: number | null | undefined;
  /** Of a cell that is off or leaning; none where no single tester carries it. */
  readonly restsOn?: readonly Carrier[];
}

/** Something that could be asked of somebody, and what it would settle. */
export interface NextQuestion {
  /** Of a tester who has reported: to measure again, or what they left out; one more tester of a size; or an edging, measured itself. */
  readonly action: "measure-again" | "measure" | "tester" | "input";
  readonly tester?: string;
  readonly measurement?: string;
  readonly size?: string;
  readonly input?: Pick<CauseInput, "kind" | "id">;
  /** Expected number of cells whose verdict it settles, less those that it opens again. */
  readonly settles: number;
}

type CauseKind = "allowance" | "settle" | "stretch" | "count" | "offset" | "step" | "from";

/** Identifies one input of the pattern, with its size or direction where it has one. */
export interface CauseInput {
  readonly kind: CauseKind;
  readonly id: string;
  readonly fabric?: string;
  readonly direction?: "stitches" | "rows";
  readonly size?: string;
}

export interface Cause extends CauseInput {
  readonly estimate: number;
  readonly standardError: number;
  readonly unit: "cm" | "factor" | "stitches" | "rows";
  /** Share of Σ(gap ÷ tolerance)² over reported cells. */
  readonly explains: number;
  readonly evidence: number;
  /** None where no single tester carries it. */
  readonly restsOn: readonly Carrier[];
  readonly rivals: readonly (CauseInput & { readonly evidence: number; readonly tied: boolean })[];
}

export interface GaugeFinding {
  readonly fabric: string;
  readonly direction: "stitches" | "rows";
  /** Gauges over 10 cm. */
  readonly stated: number;
  readonly robustMean: number | null;
  readonly robustSd: number | null;
  readonly testers: number;
  readonly verdict: "as stated" | "tighter" | "looser" | "unsettled";
}

export interface TesterFinding {
  readonly tester: string;
  readonly driftAcross: number | null;
  readonly driftAlong: number | null;
  /** Chance that all of their readings are mistakes; null where none counts. */
  readonly chance: number | null;
  readonly measurements: readonly {
    readonly measurement: string;
    readonly h: number | null;
    readonly k: number | null;
  }[];
}

export type EntryError =
  | "inches-as-cm"
  | "cm-as-inches"
  | "half-girth"
  | "twice-girth"
  | "decimal"
  | "swapped-letters"
  | "stitches-for-rows"
  | "ounces-as-grams"
  | "neighbour-size"
  | "ridges-as-rows"
  | "per-inch"
  | "inches-and-flat";

export interface Outlier {
  readonly tester: string;
  readonly what: "reading" | "swatch" | "yarn";
  readonly id: string;
  readonly value: number;
  readonly slip: EntryError | null;
  readonly wouldBe: number | null;
  readonly setAside: boolean;
  /** That it is a mistake; left out where it does not count, so that nothing is worked out from it. */
  readonly chance?: number;
}

/** From target to reading: design + workedStep + gaugeStep + gap = reading, cm. */
export interface Step {
  readonly tester: string;
  readonly measurement: string;
  readonly targetCm: number | null;
  readonly designCm: number;
  readonly workedStepCm: number;
  readonly gaugeStepCm: number;
  readonly gapCm: number;
  readonly readingCm: number;
}

export interface Variances {
  readonly offset: number | null;
  readonly step: number | null;
  readonly cell: number | null;
  readonly driftAcross: number | null;
  readonly driftAlong: number | null;
  readonly residual: number | null;
}

/** What `gaps` prints; its lists run through sizes, in each through measurements, in the pattern's order. */
export interface GapsOutput {
  readonly cells: readonly Cell[];
  readonly causes: readonly Cause[];
  readonly gauge: readonly GaugeFinding[];
  readonly testers: readonly TesterFinding[];
  readonly suspects: readonly Outlier[];
  /** Most useful first. */
  readonly askNext: readonly NextQuestion[];
  readonly steps: readonly Step[];
  readonly variances: Variances;
  readonly status: "converged" | "stopped";
}
