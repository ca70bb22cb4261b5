import { withoutSize, withSize, type DraftPattern, type Typed } from "@/engine/editing";
import { ownValue } from "@/engine/pattern";
import { uniqueSlug } from "@/engine/tables";
import { parseLength, type LengthUnit } from "@/engine/units";

/** A body measurement and how to take it. */
export type BodyRow = NonNullable<DraftPattern["bodyMeasurements"]>[number];

/** Every body measurement that the pattern explains or that a size has. */
export function bodyRows({ bodyMeasurements = [], sizes, sizeBy }: DraftPattern): readonly BodyRow[] {
  const explained = new Set(bodyMeasurements.map(({ id }) => id));
  const named = new Set([...sizes.flatMap(({ body }) => Object.keys(body)), ...(sizeBy === "" ? [] : [sizeBy])]);
  const others = [...named].filter((id) => !explained.has(id));
  return [...bodyMeasurements, ...others.map((id) => ({ id, label: id, how: "" }))];
}

export function withBodyRows(pattern: DraftPattern, rows: readonly BodyRow[]): DraftPattern {
  return { ...pattern, bodyMeasurements: rows };
}

/** The pattern with one more body measurement; where none orders the sizes, it does. */
export function withNewBody(pattern: DraftPattern, label: string): DraftPattern {
  const rows = bodyRows(pattern);
  const id = uniqueSlug(label, new Set(rows.map((row) => row.id)));
  const sizeBy = pattern.sizeBy === "" ? id : pattern.sizeBy;
  return { ...withBodyRows(pattern, [...rows, { id, label, how: "" }]), sizeBy };
}

/** The pattern without a body measurement, also in every size. */
export function withoutBody(pattern: DraftPattern, body: string): DraftPattern {
  const rows = bodyRows(pattern).filter(({ id }) => id !== body);
  const sizes = pattern.sizes.map((size) => ({ ...size, body: withKey(size.body, body, "") }));
  return { ...withBodyRows({ ...pattern, sizes }, rows), sizeBy: pattern.sizeBy === body ? "" : pattern.sizeBy };
}

export function withNewSize(pattern: DraftPattern, label: string): DraftPattern {
  return withSize(pattern, { id: uniqueSlug(label, new Set(pattern.sizes.map(({ id }) => id))), label });
}

export function withoutSizeAt(pattern: DraftPattern, index: number): DraftPattern {
  const size = pattern.sizes[index];
  return size === undefined ? pattern : withoutSize(pattern, size.id);
}

/** The size with a body measurement as typed; without it where nothing is typed. */
export function withBodyText(
  pattern: DraftPattern,
  { i, body, text }: { readonly i: number; readonly body: string; readonly text: string },
): DraftPattern {
  const sizes = pattern.sizes.map((size, index) =>
    index === i ? { ...size, body: withKey(size.body, body, text) } : size,
  );
  return { ...pattern, sizes };
}

/** Cells copied from a spreadsheet, body measurements down and sizes across, pasted from a cell on; cells outside are ignored. */
export function withPastedBodies(
  pattern: DraftPattern,
  block: readonly (readonly string[])[],
  { row, column }: { readonly row: number; readonly column: number },
): DraftPattern {
  const rows = bodyRows(pattern);
  return block.reduce((now, texts, down) => {
    const body = rows[row + down]?.id;
    if (body === undefined) return now;
    return texts.reduce(
      (each, text, across) => withBodyText(each, { i: column + across, body, text: text.trim() }),
      now,
    );
  }, pattern);
}

/** How much larger a size's body is than that of the size before it, cm; undefined where one cannot be read. */
export function stepCm(
  { sizes }: DraftPattern,
  { i, body, unit }: { readonly i: number; readonly body: string; readonly unit: LengthUnit },
): number | undefined {
  const [before, here] = [i - 1, i].map((index) => readCm(ownValue(sizes[index]?.body, body), unit));
  return before === undefined || here === undefined ? undefined : here - before;
}

function readCm(typed: Typed | undefined, unit: LengthUnit): number | undefined {
  if (typeof typed !== "string") return typed;
  const read = parseLength(typed, unit);
  return read.ok ? read.cm : undefined;
}

function withKey(body: Readonly<Record<string, Typed>>, key: string, text: string): Readonly<Record<string, Typed>> {
  const { [key]: _before, ...rest } = body;
  return text.trim() === "" ? rest : { ...body, [key]: text };
}
