import type { Cell, Variances } from "@/engine/gaps";
import type { PatternDocument } from "@/engine/pattern";
import { fromCm, type LengthUnit } from "@/engine/units";
import { cellState, type CellState } from "../verdict-copy";

/** One of the six spreads that are estimated from the call. */
export interface Spread {
  readonly key: keyof Variances;
  readonly name: string;
  readonly meaning: string;
  /** In the reader's unit or in per cent. */
  readonly words: string;
}

const SPREADS: readonly Omit<Spread, "words">[] = [
  { key: "offset", name: "Offset", meaning: "how far a measurement is off by the same amount in every size" },
  { key: "step", name: "Step", meaning: "how far it is off toward the smallest and the largest size" },
  { key: "cell", name: "Cell", meaning: "how far a single size is off on its own" },
  {
    key: "driftAcross",
    name: "Drift across",
    meaning: "how much wider or narrower a garment’s fabric is than its swatch",
  },
  { key: "driftAlong", name: "Drift along", meaning: "how much longer or shorter it is" },
  { key: "residual", name: "Reading", meaning: "what remains between one reading and the next: the hand and the tape" },
];

/** The six spreads as estimated here, drifts in per cent, the others as lengths at the pattern's tolerances. */
export function spreads(variances: Variances, pattern: PatternDocument, unit: LengthUnit): Spread[] {
  const tolerances = pattern.measurements.map(({ toleranceCm }) => toleranceCm);
  const between = { least: Math.min(...tolerances), most: Math.max(...tolerances) };
  return SPREADS.map((spread) => {
    const variance = variances[spread.key];
    if (variance === null) return { ...spread, words: "not estimated" };
    const sd = Math.sqrt(variance);
    const isDrift = spread.key === "driftAcross" || spread.key === "driftAlong";
    return { ...spread, words: isDrift ? `${(100 * sd).toFixed(1)} %` : lengthsWords(sd, between, unit) };
  });
}

/** A spread in tolerances as lengths, from the pattern's smallest tolerance to its largest. */
function lengthsWords(sd: number, { least, most }: { least: number; most: number }, unit: LengthUnit): string {
  const length = (toleranceCm: number) => fromCm(sd * toleranceCm, unit).toFixed(2);
  return least === most ? `${length(least)} ${unit}` : `${length(least)} to ${length(most)} ${unit}`;
}

/** How many cells have each verdict. */
export function verdictTally(cells: readonly Cell[]): Readonly<Record<CellState, number>> {
  const tally = { off: 0, leaning: 0, unsettled: 0, holds: 0, none: 0 };
  for (const cell of cells) tally[cellState(cell)] += 1;
  return tally;
}
