import { fitFindings, settleCall, type Cell, type FitFinding } from "@/engine/gaps";
import type { CallDocument, Measurement, PatternDocument, Size } from "@/engine/pattern";
import type { FitScale } from "@/engine/reporting";
import type { LoadedAnalysis } from "./loaders";

/** What one tester says of one area. */
export interface FitAnswer {
  readonly tester: string;
  readonly name: string;
  readonly size: Size;
  readonly scale: FitScale;
  readonly says: string | null;
}

/** One area in one size: what testers say, beside the gaps of what governs it. */
export interface FitRow {
  readonly size: Size;
  readonly answers: readonly FitAnswer[];
  readonly cells: readonly Cell[];
}

export interface FitArea {
  readonly id: string;
  readonly label: string;
  /** Measurements whose targets rest on it. */
  readonly governing: readonly Measurement[];
  /** Goes round the body: tight or loose; else it may be short or long too. */
  readonly isGirth: boolean;
  readonly rows: readonly FitRow[];
  readonly findings: readonly AreaFinding[];
}

/** A finding of one or more measurements that say the same. */
export interface AreaFinding extends Omit<FitFinding, "measurement"> {
  readonly measurements: readonly Measurement[];
  /** Every one of these cells is found on size. */
  readonly isOnSize: boolean;
}

/** What testers say of the fit, by area and size, in the pattern's order; areas that nobody speaks of are left out. */
export function fitBoard({ document, output, names }: LoadedAnalysis): FitArea[] {
  const { pattern } = document;
  const answers = fitAnswers(document, names);
  const findings = fitFindings(settleCall(document).call, output.cells);
  return areasOf(pattern)
    .filter(({ id }) => answers.some(({ area }) => area === id))
    .map(({ id, label }) => {
      const governing = pattern.measurements.filter(
        ({ target }) => target !== undefined && "body" in target && target.body === id,
      );
      return {
        ...{ id, label, governing },
        isGirth: governing.some(({ girth }) => girth === true),
        rows: pattern.sizes.map((size) => ({
          size,
          answers: answers.filter(({ area, size: own }) => area === id && own.id === size.id),
          cells: governing.flatMap((measurement) => cellOf(output.cells, measurement, size)),
        })),
        findings: alike(
          findings.filter(({ area }) => area === id),
          { pattern, cells: output.cells },
        ),
      };
    });
}

function fitAnswers({ pattern, testers }: CallDocument, names: ReadonlyMap<string, string>) {
  const sizes = new Map(pattern.sizes.map((size) => [size.id, size]));
  return testers.flatMap(({ id, size: sizeId, fit = [] }) => {
    const size = sizes.get(sizeId);
    if (size === undefined) return [];
    const name = names.get(id) ?? id;
    return fit.map(({ area, scale, says }) => ({ area, tester: id, name, size, scale, says: says ?? null }));
  });
}

function areasOf({ bodyMeasurements = [], sizes }: PatternDocument) {
  const named = new Map(bodyMeasurements.map(({ id, label }) => [id, label]));
  const ids = new Set([...named.keys(), ...sizes.flatMap(({ body }) => Object.keys(body))]);
  return [...ids].map((id) => ({ id, label: named.get(id) ?? id }));
}

function cellOf(cells: readonly Cell[], measurement: Measurement, size: Size): Cell[] {
  return cells.filter((cell) => cell.measurement === measurement.id && cell.size === size.id);
}

function alike(
  findings: readonly FitFinding[],
  { pattern, cells }: { pattern: PatternDocument; cells: readonly Cell[] },
): AreaFinding[] {
  const keyOf = ({ measurement: _measurement, ...finding }: FitFinding) => JSON.stringify(finding);
  return [...new Set(findings.map(keyOf))].flatMap((key) => {
    const same = findings.filter((finding) => keyOf(finding) === key);
    const [first] = same;
    if (first === undefined) return [];
    const measurements = pattern.measurements.filter(({ id }) => same.some(({ measurement }) => measurement === id));
    const sizes = sizesOf(first, pattern);
    const reported = measurements.flatMap((measurement) =>
      sizes.flatMap((size) => cellOf(cells, measurement, size)).filter(({ reports }) => reports > 0),
    );
    return [{ ...first, measurements, isOnSize: reported.every(({ verdict }) => verdict === "holds") }];
  });
}

/** The sizes of a finding's range. */
export function sizesOf({ from, to }: Pick<FitFinding, "from" | "to">, { sizes }: PatternDocument): readonly Size[] {
  const at = (id: string) => sizes.findIndex((size) => size.id === id);
  return sizes.slice(at(from), at(to) + 1);
}
