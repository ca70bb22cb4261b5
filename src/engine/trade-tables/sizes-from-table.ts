import type { PatternDocument } from "../pattern";
import { toCm, type LengthUnit } from "../units";
import type { BodyRow, BodyTable, Printed } from "./body-table";

/** What of a printed range becomes the size's body. */
export const RANGE_POINTS = ["middle", "low", "high"] as const;
export type RangePoint = (typeof RANGE_POINTS)[number];

export interface TableChoice {
  /** Ids of the sizes that are wanted, in any order; all when left out. */
  readonly sizes?: readonly string[];
  /** Ids of the body measurements that are wanted; all when left out. The one that orders the sizes always comes along. */
  readonly measurements?: readonly string[];
  /** The middle when left out: it stands nearest to the whole range, so that no body it is meant for lies further than half of it away. */
  readonly ofRange?: RangePoint;
}

export type TableSizes = Required<Pick<PatternDocument, "bodyMeasurements" | "sizes" | "sizeBy">>;

/**
 * Sizes of a pattern as a published table has them.
 *
 * @param table one of `BODY_TABLES`.
 * @param choice which sizes and measurements, and what of a range.
 * @returns members of a pattern document, in the table's order; bodies in cm, unrounded, from inches at 2.54 exactly.
 * @throws {RangeError} for an id that the table does not have, or where no size is left.
 */
export function sizesFromTable(table: BodyTable, choice: TableChoice = {}): TableSizes {
  const sizes = chosen({ ids: choice.sizes, items: table.sizes, idOf: ({ id }) => id, what: "size" });
  if (sizes.length === 0) throw new RangeError("no size is chosen");
  const wanted = choice.measurements === undefined ? undefined : [table.sizeBy, ...choice.measurements];
  const rows = chosen({ ids: wanted, items: table.rows, idOf: rowId, what: "body measurement" });
  const ofRange = choice.ofRange ?? "middle";
  return {
    bodyMeasurements: rows.map(({ item: { measurement } }) => {
      const { id, label, how } = measurement;
      return { id, label, how };
    }),
    sizes: sizes.map(({ item: { id, label }, index }) => ({
      id,
      label,
      body: Object.fromEntries(
        rows.map(({ item }) => [rowId(item), bodyCm(item, { index, unit: table.unit, ofRange })]),
      ),
    })),
    sizeBy: table.sizeBy,
  };
}

function rowId({ measurement }: BodyRow): string {
  return measurement.id;
}

interface Choosing<Item> {
  readonly ids: readonly string[] | undefined;
  readonly items: readonly Item[];
  readonly idOf: (item: Item) => string;
  readonly what: string;
}

function chosen<Item>({ ids, items, idOf, what }: Choosing<Item>): { readonly item: Item; readonly index: number }[] {
  const all = items.map((item, index) => ({ item, index }));
  if (ids === undefined) return all;
  const known = new Set(items.map(idOf));
  const unknown = ids.find((id) => !known.has(id));
  if (unknown !== undefined) throw new RangeError(`the table has no ${what} ${unknown}`);
  return all.filter(({ item }) => ids.includes(idOf(item)));
}

function bodyCm(
  row: BodyRow,
  { index, unit, ofRange }: { readonly index: number; readonly unit: LengthUnit; readonly ofRange: RangePoint },
): number {
  const printed = row.printed[unit]?.[index];
  if (printed === undefined) throw new RangeError(`${row.measurement.id} is not printed in ${unit} for every size`);
  return toCm(pointOf(printed, ofRange), unit);
}

function pointOf(printed: Printed, ofRange: RangePoint): number {
  if (typeof printed === "number") return printed;
  const [low, high] = printed;
  switch (ofRange) {
    case "low":
      return low;
    case "high":
      return high;
    case "middle":
      return (low + high) / 2;
  }
}
