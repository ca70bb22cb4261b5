import { countsOfTerm, NO_GARMENT, ownValue, type Measurement, type PatternDocument } from "../pattern";
import { explainMeasurement, indexPattern, type ExplainedTerm, type PatternIndex } from "../prediction";
import type { LengthUnit } from "../units";
import type { DraftPattern, Typed } from "./draft-pattern";
import { readablePart } from "./readable-part";

type DraftMeasurement = DraftPattern["measurements"][number];

export type ExplainedLine =
  | { readonly status: "computed"; readonly term: ExplainedTerm }
  /** Labels of the counts that have no number in that size yet. */
  | { readonly status: "missing"; readonly counts: readonly string[] }
  | { readonly status: "unread" };

export interface ExplainedDraft {
  /** In the order of the terms. */
  readonly lines: readonly ExplainedLine[];
  /** Cm, null while a line cannot be computed and while there is none. */
  readonly designCm: number | null;
  /** Its readable target, if there is one; valid for the chosen size only. */
  readonly target: { readonly measurement: Measurement; readonly cm: number } | null;
  readonly toleranceCm: number | null;
}

interface Given {
  /** The readable part of the whole draft. */
  readonly readable: PatternDocument;
  readonly measurement: DraftMeasurement;
  /** Id of a size. */
  readonly size: string;
  readonly unit: LengthUnit;
}

/**
 * How a measurement that is being edited is calculated in one size, as far as it is readable: a line that cannot be
 * computed does not affect the others.
 *
 * @returns null if the size itself is unreadable.
 */
export function explainDraft({ readable, measurement, size: chosen, unit }: Given): ExplainedDraft | null {
  const size = readable.sizes.find(({ id }) => id === chosen);
  if (size === undefined) return null;
  const { terms, toleranceCm, target } = measurement;
  const apart: DraftMeasurement[] = [
    ...terms.map((term, index) => ({ ...BARE, id: lineId(index), terms: [term] })),
    { ...BARE, id: "tolerance", toleranceCm },
    ...(target === undefined ? [] : [{ ...BARE, id: "target", target: targetOf(readable, target, chosen) }]),
  ];
  const read = readablePart({ ...readable, ties: [], garment: NO_GARMENT, measurements: apart }, unit);
  if (read === null) return null;
  const index = indexPattern(read);
  const byId = new Map(read.measurements.map((each) => [each.id, each]));
  const lines = terms.map((_, position) => explainLine(index, byId.get(lineId(position)), chosen));
  const aim = byId.get("target");
  const aimCm = aim === undefined ? null : explainMeasurement(index, aim, size).targetCm;
  return {
    lines,
    designCm: sumOf(lines),
    target: aim === undefined || aimCm === null ? null : { measurement: aim, cm: aimCm },
    toleranceCm: byId.get("tolerance")?.toleranceCm ?? null,
  };
}

/** A placeholder measurement, so that the parts can be read independently. */
const BARE = {
  letter: "",
  label: "",
  how: "",
  toleranceCm: 1,
  terms: [{ times: 1, diagonal: { across: [], along: [] } }],
} satisfies Omit<DraftMeasurement, "id">;

function lineId(index: number): string {
  return `line-${index}`;
}

/** The target with the chosen size's number in every size, so that another size's fault does not hide it. */
function targetOf(
  { sizes }: PatternDocument,
  target: NonNullable<DraftMeasurement["target"]>,
  size: string,
): NonNullable<DraftMeasurement["target"]> {
  if ("cm" in target) {
    const cm: Typed = ownValue(target.cm, size) ?? "";
    return { cm: Object.fromEntries(sizes.map(({ id }) => [id, cm])) };
  }
  const { easeCm } = target;
  return { ...target, easeCm: typeof easeCm === "object" ? (ownValue(easeCm, size) ?? "") : easeCm };
}

function explainLine(index: PatternIndex, measurement: Measurement | undefined, chosen: string): ExplainedLine {
  const size = index.pattern.sizes.find(({ id }) => id === chosen);
  if (measurement === undefined || size === undefined) return { status: "unread" };
  const missing = measurement.terms
    .flatMap(countsOfTerm)
    .filter((count) => ownValue(ownValue(index.pattern.grading, count), chosen) === undefined);
  if (missing.length > 0) {
    return { status: "missing", counts: missing.map((count) => index.counts.get(count)?.label ?? count) };
  }
  const [line] = explainMeasurement(index, measurement, size).lines;
  return line === undefined ? { status: "unread" } : { status: "computed", term: line.term };
}

function sumOf(lines: readonly ExplainedLine[]): number | null {
  if (lines.length === 0) return null;
  return lines.reduce<number | null>(
    (sum, line) => (sum === null || line.status !== "computed" ? null : sum + line.term.cm),
    0,
  );
}
