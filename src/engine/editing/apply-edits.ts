import { ownValue, type Grading, type Measurement, type PatternDocument, type CmBySize } from "../pattern";
import { parseLength, parseNumber, type LengthUnit } from "../units";
import { editFields, type EditField } from "./edit-fields";
import { plausibilityQuestion } from "./plausibility-question";
import type { PatternChange } from "./pattern-change";
import { patternChanges } from "./pattern-changes";

/** Typed texts, by the path of their field as in `editFields`. */
export type TypedEdits = Readonly<Record<string, string>>;

/** A message about the text at a path. */
interface EditMessage {
  readonly path: string;
  readonly message: string;
}

export interface AppliedEdits {
  /** The pattern with all readable edits; for unreadable ones the number is unchanged. */
  readonly document: PatternDocument;
  readonly faults: readonly EditMessage[];
  /** Implausible numbers. */
  readonly questions: readonly EditMessage[];
  readonly changes: readonly PatternChange[];
}

/** No number of a document may be larger (see the pattern's schema). */
const MAX_NUMBER = 1_000_000;

/**
 * Applies typed edits to the numbers of a pattern.
 *
 * @param pattern the revision that the edits are made on.
 * @param typed texts by path; may contain a decimal comma, a fraction, or a unit after a length.
 * @param unit unit of lengths without one.
 * @returns the edited pattern, and messages about the texts; lengths in cm.
 */
export function applyEdits(pattern: PatternDocument, typed: TypedEdits, unit: LengthUnit): AppliedEdits {
  const fields = editFields(pattern);
  const faults: EditMessage[] = unknownPaths(typed, fields);
  const questions: EditMessage[] = [];
  const values = new Map<string, number>();
  for (const field of fields) {
    const text = ownValue(typed, field.path);
    if (text === undefined) continue;
    const read = readValue(field, text, unit);
    if (!read.ok) {
      faults.push({ path: field.path, message: read.message });
      continue;
    }
    const question = plausibilityQuestion(field, read.value);
    if (question !== undefined) questions.push({ path: field.path, message: question });
    values.set(field.path, read.value);
  }
  faults.push(...incompleteCounts(fields, values, typed));
  const document = withValues(pattern, values);
  return { document, faults, questions, changes: patternChanges(pattern, document) };
}

/** Faults for texts whose number this revision does not have. */
function unknownPaths(typed: TypedEdits, fields: readonly EditField[]): EditMessage[] {
  const known = new Set(fields.map(({ path }) => path));
  return Object.keys(typed)
    .filter((path) => !known.has(path))
    .map((path) => ({ path, message: "This revision no longer has this number; remove the edit." }));
}

/** A count without numbers needs one in every size or in none. */
function incompleteCounts(
  fields: readonly EditField[],
  values: ReadonlyMap<string, number>,
  typed: TypedEdits,
): EditMessage[] {
  const missing = fields.filter(
    ({ kind, path, value }) => kind === "count" && value === undefined && ownValue(typed, path) === undefined,
  );
  return missing
    .filter(({ id }) => fields.some((field) => field.kind === "count" && field.id === id && values.has(field.path)))
    .map(({ path }) => ({ path, message: "A number is missing here: a count needs one in every size." }));
}

type ReadValue = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly message: string };

function readValue(field: EditField, text: string, unit: LengthUnit): ReadValue {
  const read = field.kind === "count" ? parseNumber(text) : readLength(text, unit);
  if (!read.ok) return read;
  const { value } = read;
  if (Math.abs(value) > MAX_NUMBER) return { ok: false, message: "This number is too large." };
  switch (field.kind) {
    case "count":
      if (!Number.isInteger(value)) return { ok: false, message: "Stitches and rows are whole numbers." };
      return value < 0 ? { ok: false, message: "Stitches and rows cannot be below 0." } : read;
    case "length":
      return value < 0 ? { ok: false, message: "A length cannot be below 0." } : read;
    case "target":
      return value <= 0 ? { ok: false, message: "A finished length must be above 0." } : read;
    case "allowance":
    case "ease":
      return read;
  }
}

function readLength(text: string, unit: LengthUnit): ReadValue {
  const read = parseLength(text, unit);
  return read.ok ? { ok: true, value: read.cm } : read;
}

function withValues(pattern: PatternDocument, values: ReadonlyMap<string, number>): PatternDocument {
  const edited = (list: string, id: string, cm: CmBySize): CmBySize => {
    if (typeof cm === "number") return values.get(`${list}.${id}.all`) ?? cm;
    return Object.fromEntries(
      Object.entries(cm).map(([size, was]) => [size, values.get(`${list}.${id}.${size}`) ?? was]),
    );
  };
  return {
    ...pattern,
    ...withGrading(pattern, values),
    ...(pattern.lengths && {
      lengths: pattern.lengths.map((length) => ({ ...length, cm: edited("lengths", length.id, length.cm) })),
    }),
    allowances: pattern.allowances.map((item) => ({ ...item, cm: edited("allowances", item.id, item.cm) })),
    measurements: pattern.measurements.map((measurement) => withTarget(measurement, values, edited)),
  };
}

function withTarget(
  measurement: Measurement,
  values: ReadonlyMap<string, number>,
  edited: (list: string, id: string, cm: CmBySize) => CmBySize,
): Measurement {
  const { id, target } = measurement;
  if (target === undefined) return measurement;
  if ("easeCm" in target)
    return { ...measurement, target: { ...target, easeCm: edited("targets", id, target.easeCm) } };
  const cm = Object.entries(target.cm).map(([size, was]) => [size, values.get(`targets.${id}.${size}`) ?? was]);
  return { ...measurement, target: { cm: Object.fromEntries(cm) } };
}

function withGrading(pattern: PatternDocument, values: ReadonlyMap<string, number>): { readonly grading?: Grading } {
  const entries = pattern.counts.flatMap(({ id }) => {
    const bySize = pattern.sizes.flatMap((size) => {
      const value = values.get(`grading.${id}.${size.id}`) ?? ownValue(ownValue(pattern.grading, id), size.id);
      return value === undefined ? [] : [[size.id, value] as const];
    });
    return bySize.length === pattern.sizes.length ? [[id, Object.fromEntries(bySize)] as const] : [];
  });
  return entries.length === 0 && pattern.grading === undefined ? {} : { grading: Object.fromEntries(entries) };
}
