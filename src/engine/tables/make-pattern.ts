import { NO_GARMENT, PATTERN_FORMAT, type PatternDocument } from "../pattern";
import type { ReadCount, ReadGauge, ReadMeasurement, Breakdown } from "./measurement-table";
import type { ReadRows } from "./read-measurement-rows";
import { uniqueSlug } from "./slug";
import { perCm } from "./best-multiple";

interface Stated {
  readonly name: string;
  readonly craft: "crochet" | "knitting";
  readonly gauge: ReadGauge;
  readonly toolMm: number;
}

interface Made {
  readonly pattern: PatternDocument;
  readonly breakdowns: readonly Breakdown[];
  readonly remarks: readonly string[];
}

/** The only fabric of a pattern that comes from a table. */
const FABRIC = "main-fabric";

/** Makes a pattern document from rows that were read without a fault. Its design values are the published numbers. */
export function makePattern(read: ReadRows, stated: Stated): Made {
  const builder = new PatternBuilder(read, stated.gauge);
  const body = bodyOf(read);
  const measurements = read.measurements.map((measurement) => builder.measurement(measurement));
  const { stitches, rows, overCm } = stated.gauge;
  return {
    pattern: {
      format: PATTERN_FORMAT,
      name: stated.name,
      craft: stated.craft,
      bodyMeasurements: body.rows.map(({ id, label, how }) => ({ id, label, how })),
      fabrics: [{ id: FABRIC, label: "Main fabric", toolMm: stated.toolMm, gauge: { stitches, rows, overCm } }],
      sizes: builder.sizes.map(({ id, label }, index) => ({
        id,
        label,
        body: Object.fromEntries(body.rows.map(({ id: bodyId, cm }) => [bodyId, cm[index] ?? 0])),
      })),
      sizeBy: body.rows[0]?.id ?? "",
      counts: builder.counts,
      ties: [],
      lengths: builder.lengths,
      allowances: builder.allowances,
      garment: NO_GARMENT,
      measurements,
      yarns: [],
      grading: builder.grading,
    },
    breakdowns: builder.breakdowns,
    remarks: body.remarks,
  };
}

interface BodyRow {
  readonly id: string;
  readonly label: string;
  readonly how: string;
  readonly cm: readonly number[];
}

/** Sizes are ordered by a body measurement; if the table has none, a finished measurement is used instead. */
function bodyOf({ bodies, measurements }: ReadRows): {
  readonly rows: readonly BodyRow[];
  readonly remarks: readonly string[];
} {
  const taken = new Set<string>();
  if (bodies.length > 0) {
    return { rows: bodies.map(({ label, cm }) => ({ id: uniqueSlug(label, taken), label, how: "", cm })), remarks: [] };
  }
  const from = bodySubstitute(measurements);
  if (from === undefined) return { rows: [], remarks: [] };
  const how = `Not in the pasted table: the finished “${from.label}” stands for it.`;
  const remark = `The table has no body measurement, so sizes are ordered by the finished “${from.label}”.`;
  return { rows: [{ id: "to-fit", label: "To fit", how, cm: from.cm }], remarks: [remark] };
}

/** The finished measurement that orders the sizes where the table has no body measurement. */
export function bodySubstitute(measurements: readonly ReadMeasurement[]): ReadMeasurement | undefined {
  return measurements.find(({ girth }) => girth) ?? measurements[0];
}

type Mutable<List> = List extends readonly (infer Item)[] ? Item[] : never;

/** Smaller differences of lengths are rounding errors, cm. */
const ROUNDING_CM = 1e-10;

class PatternBuilder {
  readonly sizes: readonly { readonly id: string; readonly label: string }[];
  readonly counts: Mutable<PatternDocument["counts"]> = [];
  readonly lengths: Mutable<NonNullable<PatternDocument["lengths"]>> = [];
  readonly allowances: Mutable<PatternDocument["allowances"]> = [];
  readonly grading: Record<string, Record<string, number>> = {};
  readonly breakdowns: Breakdown[] = [];
  private readonly ids = {
    counts: new Set<string>(),
    lengths: new Set<string>(),
    allowances: new Set<string>(),
    measurements: new Set<string>(),
  };
  private readonly countByRow = new Map<number, { readonly id: string; readonly count: ReadCount }>();

  constructor(
    read: ReadRows,
    private readonly gauge: ReadGauge,
  ) {
    const taken = new Set<string>();
    this.sizes = read.sizes.map((label) => ({ id: uniqueSlug(label, taken), label }));
    for (const count of read.counts) this.countByRow.set(count.row, { id: this.addCount(count), count });
  }

  measurement(read: ReadMeasurement): PatternDocument["measurements"][number] {
    const id = uniqueSlug(read.label, this.ids.measurements);
    const { letter, label, toleranceCm, girth } = read;
    const terms = read.workedIn === "ruler" ? this.lengthTerms(id, read) : this.countTerms(id, read);
    return {
      id,
      letter,
      label,
      how: "",
      toleranceCm,
      terms,
      target: { cm: this.bySize(read.cm) },
      ...(girth ? { girth } : {}),
    };
  }

  private lengthTerms(
    measurement: string,
    { label, cm, row, workedIn }: ReadMeasurement,
  ): PatternDocument["measurements"][number]["terms"] {
    const id = uniqueSlug(label, this.ids.lengths);
    this.lengths.push({ id, label, cm: this.bySize(cm) });
    const nothing = cm.map(() => 0);
    this.breakdowns.push({
      row,
      measurement,
      workedIn,
      countRow: null,
      times: 1,
      countLabel: null,
      counts: [],
      countedCm: cm,
      restCm: nothing,
    });
    return [{ times: 1, length: id }];
  }

  private countTerms(measurement: string, read: ReadMeasurement): PatternDocument["measurements"][number]["terms"] {
    const { row, label, workedIn, times } = read;
    const direction = workedIn === "rows" ? "rows" : "stitches";
    const { id, count } = this.countOf(read, direction);
    const countedCm = count.values.map((value) => (times * value) / perCm(this.gauge, direction));
    const restCm = read.cm.map((cm, index) => cm - (countedCm[index] ?? 0));
    this.breakdowns.push({
      row,
      measurement,
      workedIn,
      countRow: read.countRow,
      times,
      countLabel: count.label,
      counts: count.values,
      countedCm,
      restCm,
    });
    const term = { times, count: id };
    if (restCm.every((cm) => Math.abs(cm) < ROUNDING_CM)) return [term];
    const allowance = uniqueSlug(`${label} rest`, this.ids.allowances);
    this.allowances.push({
      id: allowance,
      label: `Edgings, seams and rounding of “${label}”`,
      cm: this.sameOrBySize(restCm),
    });
    return [term, { times: 1, allowance }];
  }

  private countOf(
    read: ReadMeasurement,
    direction: "stitches" | "rows",
  ): { readonly id: string; readonly count: ReadCount } {
    const given = read.countRow === null ? undefined : this.countByRow.get(read.countRow);
    if (given !== undefined) return given;
    const values = read.cm.map((cm) => Math.max(1, Math.round((cm * perCm(this.gauge, direction)) / read.times)));
    const label = `${direction === "rows" ? "Rows" : "Stitches"} of “${read.label}”, calculated from the finished measurement`;
    const count = { row: read.row, label, direction, values };
    return { id: this.addCount(count, `${read.label} ${direction}`), count };
  }

  private addCount({ label, direction, values }: ReadCount, named = label): string {
    const id = uniqueSlug(named, this.ids.counts);
    this.counts.push({ id, label, fabric: FABRIC, direction });
    this.grading[id] = this.bySize(values);
    return id;
  }

  private sameOrBySize(cm: readonly number[]): number | Record<string, number> {
    const [first = 0] = cm;
    return cm.every((value) => Math.abs(value - first) < ROUNDING_CM) ? first : this.bySize(cm);
  }

  private bySize(values: readonly number[]): Record<string, number> {
    return Object.fromEntries(this.sizes.map(({ id }, index) => [id, values[index] ?? 0]));
  }
}
