import type { LengthUnit } from "../units";
import type { BodyMeasurement } from "./body-measurements";
import type { Mark, Provenance } from "./provenance";

/** A figure as a chart prints it: one number, or the lowest and the highest of a range. */
export type Printed = number | readonly [low: number, high: number];

/** One body measurement of a table, through its sizes. */
export interface BodyRow {
  readonly measurement: BodyMeasurement;
  /** By the unit they are printed in, in the order of the table's sizes; the table's `unit` is always there. */
  readonly printed: Readonly<Partial<Record<LengthUnit, readonly Printed[]>>>;
  /** Where a size's figure is not marked as the table is: mark by size id. */
  readonly marks?: Readonly<Record<string, Mark>>;
}

/** A published table of body measurements by size. */
export interface BodyTable extends Provenance {
  readonly id: string;
  readonly label: string;
  /** The unit whose figures are used, and why where the chart prints both. */
  readonly unit: LengthUnit;
  readonly unitWhy: string;
  /** Limitations that a reader should know; may be empty. */
  readonly remarks: readonly string[];
  /** Smallest first. */
  readonly sizes: readonly { readonly id: string; readonly label: string }[];
  /** The measurement that orders the sizes; it rises from each size to the next. */
  readonly sizeBy: string;
  readonly rows: readonly BodyRow[];
}

/** Sizes as a table labels them, with ids for documents. */
export function labelledSizes(labels: readonly string[]): BodyTable["sizes"] {
  return labels.map((label) => ({ id: `size-${label.toLowerCase().replaceAll("/", "-")}`, label }));
}

/** How far one figure of a table can be trusted. */
export function markOf(table: BodyTable, row: BodyRow, size: string): Mark {
  return row.marks?.[size] ?? table.mark;
}

/**
 * Ids of a table's sizes from one to another, both included, whichever of the two is the larger.
 *
 * @param first a size's id; the table's smallest where it is none of the table's. @param last the same, else the largest.
 */
export function sizesBetween({ sizes }: BodyTable, first: string | undefined, last: string | undefined): string[] {
  const indexOf = (id: string | undefined, otherwise: number) => {
    const found = sizes.findIndex((size) => size.id === id);
    return found === -1 ? otherwise : found;
  };
  const [from, to] = [indexOf(first, 0), indexOf(last, sizes.length - 1)];
  return sizes.slice(Math.min(from, to), Math.max(from, to) + 1).map(({ id }) => id);
}
