import { NO_GARMENT, parsePattern, PATTERN_FORMAT, type PatternDocument } from "@/engine/pattern";
import { readSizeList, sizesOfList, uniqueSlug } from "@/engine/tables";
import { BODY_TABLES, sizesBetween, sizesFromTable, type BodyTable, type TableSizes } from "@/engine/trade-tables";
import type { LengthUnit } from "@/engine/units";
import type { NewPatternFields } from "./new-pattern-schema";

/** What is wrong, by the form's field. */
type Faults = Readonly<Record<string, readonly string[]>>;

export type InitialPattern =
  { readonly ok: true; readonly document: PatternDocument } | { readonly ok: false; readonly faults: Faults };

/** The new pattern of a form: its sizes and its first fabric, and nothing else yet. */
export function initialPattern(fields: NewPatternFields, unit: LengthUnit): InitialPattern {
  const sizes = sizesOf(fields, unit);
  if (!sizes.ok) return sizes;
  const { label, toolMm, stitches, rows, over, worked } = fields.fabric;
  const gauge = { stitches, rows, overCm: over };
  const parsed = parsePattern({
    format: PATTERN_FORMAT,
    name: fields.name,
    craft: fields.craft,
    ...sizes.taken,
    fabrics: [{ id: uniqueSlug(label, new Set()), label, toolMm, gauge, worked }],
    counts: [],
    ties: [],
    lengths: [],
    allowances: [],
    garment: NO_GARMENT,
    measurements: [],
    yarns: [],
    grading: {},
  });
  if (parsed.ok) return parsed;
  const [fault] = parsed.faults;
  return { ok: false, faults: { [fieldOf(fault?.path ?? "")]: [`This ${fault?.says ?? "cannot be saved."}`] } };
}

/** Where in the form a part of the document was typed; "" is the form as a whole. */
function fieldOf(path: string): string {
  if (path === "name") return path;
  if (path.startsWith("fabrics")) return "fabric.label";
  if (path.startsWith("bodyMeasurements")) return "own.body";
  return path.startsWith("sizes") ? "own.sizes" : "";
}

type Sizes = { readonly ok: true; readonly taken: TableSizes } | { readonly ok: false; readonly faults: Faults };

/** The sizes that a form has chosen or typed. */
export function sizesOf(
  { sizesFrom, tables, own }: Pick<NewPatternFields, "sizesFrom" | "tables" | "own">,
  unit: LengthUnit,
): Sizes {
  const table = BODY_TABLES.find(({ id }) => id === sizesFrom);
  if (table !== undefined) return tableSizes(table, tables?.[table.id]);
  const list = readSizeList(own.sizes ?? "", unit);
  if (!list.ok) return { ok: false, faults: { "own.sizes": list.faults } };
  return { ok: true, taken: sizesOfList(list.sizes, own.body ?? "") };
}

type Chosen = NonNullable<NewPatternFields["tables"]>[string];

function tableSizes(table: BodyTable, chosen: Chosen): Sizes {
  const { first, last, ofRange, measurements = [] } = chosen ?? {};
  const sizes = sizesBetween(table, first, last);
  const known = table.rows.map(({ measurement }) => measurement.id);
  const wanted = measurements.filter((id) => known.includes(id));
  return { ok: true, taken: sizesFromTable(table, { sizes, measurements: wanted, ...(ofRange ? { ofRange } : {}) }) };
}
