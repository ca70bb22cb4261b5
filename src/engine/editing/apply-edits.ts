import {
  NUMBER_RULES,
  ownValue,
  patternDocumentSchema,
  patternRangeFaults,
  schemaFaults,
  type PatternDocument,
} from "../pattern";
import type { LengthUnit } from "../units";
import type { PatternChange } from "./describe-path";
import { pathByIndex, withValueAt } from "./document-path";
import { editFields, type EditField } from "./edit-fields";
import { patternChanges } from "./pattern-changes";
import { plausibilityQuestion } from "./plausibility-question";
import { faultSentence, typedParts } from "./read-draft";

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

/** The texts that can be read, as numbers by path; lengths in cm. */
type Values = ReadonlyMap<string, number>;

/**
 * Applies typed edits to the numbers of a pattern; each text is read as the editor reads it.
 *
 * @param pattern the revision that the edits are made on.
 * @param typed texts by path; may contain a decimal comma, a fraction, or a unit after a length.
 * @param unit unit of lengths without one.
 * @returns the edited pattern, and messages about the texts; lengths in cm.
 */
export function applyEdits(pattern: PatternDocument, typed: TypedEdits, unit: LengthUnit): AppliedEdits {
  const fields = editFields(pattern);
  const read = readValues(fields, typed, unit);
  const unusable = [...incompleteCounts(fields, read.values, typed), ...rangeMessages(pattern, read.values, unit)];
  const values = usableValues(fields, read.values, unusable);
  const document = withValues(pattern, values);
  return {
    document,
    faults: [...unknownPaths(typed, fields), ...read.faults, ...unusable],
    questions: fields.flatMap((field) => {
      const value = values.get(field.path);
      const message = value === undefined ? undefined : plausibilityQuestion(field, value);
      return message === undefined ? [] : [{ path: field.path, message }];
    }),
    changes: patternChanges(pattern, document),
  };
}

/** Faults for texts whose number this revision does not have. */
function unknownPaths(typed: TypedEdits, fields: readonly EditField[]): EditMessage[] {
  const known = new Set(fields.map(({ path }) => path));
  return Object.keys(typed)
    .filter((path) => !known.has(path))
    .map((path) => ({ path, message: "This revision no longer has this number; remove the edit." }));
}

function readValues(
  fields: readonly EditField[],
  typed: TypedEdits,
  unit: LengthUnit,
): { readonly values: Values; readonly faults: readonly EditMessage[] } {
  const values = new Map<string, number>();
  const faults: EditMessage[] = [];
  const parts = typedParts(unit);
  for (const { kind, path } of fields) {
    const text = ownValue(typed, path);
    if (text === undefined) continue;
    const parsed = parts[PARTS[kind]].safeParse(text);
    if (parsed.success) values.set(path, parsed.data);
    else faults.push({ path, message: sentenceOf(kind, schemaFaults(parsed.error.issues)[0]?.says ?? "") });
  }
  return { values, faults };
}

/** Which of the document's numbers each is. */
const PARTS = {
  count: "whole",
  allowance: "length",
  length: "notNegativeLength",
  ease: "length",
  target: "positiveLength",
} as const satisfies Readonly<Record<EditField["kind"], keyof ReturnType<typeof typedParts>>>;

/** The rules of numbers in this page's words. */
const SENTENCES: Readonly<Partial<Record<EditField["kind"], Readonly<Record<string, string>>>>> = {
  count: {
    [NUMBER_RULES.whole]: "Stitches and rows are whole numbers.",
    [NUMBER_RULES.notNegative]: "Stitches and rows cannot be below 0.",
  },
  length: { [NUMBER_RULES.notNegative]: "A length cannot be below 0." },
  target: { [NUMBER_RULES.positive]: "A finished length must be above 0." },
};

function sentenceOf(kind: EditField["kind"], says: string): string {
  if (says === NUMBER_RULES.largest || says === NUMBER_RULES.smallest) return "This number is too large.";
  return ownValue(SENTENCES[kind], says) ?? faultSentence(says);
}

/** A count without numbers needs one in every size or in none. */
function incompleteCounts(fields: readonly EditField[], values: Values, typed: TypedEdits): EditMessage[] {
  const counts = fields.filter(({ kind }) => kind === "count");
  const begun = new Set(counts.filter(({ path }) => values.has(path)).map(({ id }) => id));
  return counts
    .filter(({ id, path, value }) => value === undefined && begun.has(id) && ownValue(typed, path) === undefined)
    .map(({ path }) => ({ path, message: "A number is missing here: a count needs one in every size." }));
}

/** Numbers that no pattern may have. */
function rangeMessages(pattern: PatternDocument, values: Values, unit: LengthUnit): EditMessage[] {
  const paths = new Map([...values.keys()].map((path) => [pathByIndex(pattern, path), path]));
  return patternRangeFaults(withValues(pattern, values), { unit }).flatMap(({ path, says }) => {
    const edited = paths.get(path);
    return edited === undefined ? [] : [{ path: edited, message: faultSentence(says) }];
  });
}

/** The numbers without a fault, of counts only where every size then has one. */
function usableValues(fields: readonly EditField[], values: Values, unusable: readonly EditMessage[]): Values {
  const faulty = new Set(unusable.map(({ path }) => path));
  const usable = fields.filter(({ path }) => values.has(path) && !faulty.has(path));
  const open = new Set(
    fields
      .filter((field) => field.kind === "count" && field.value === undefined && !usable.includes(field))
      .map(({ id }) => id),
  );
  return new Map(
    usable.flatMap(({ kind, id, path }) => {
      const value = values.get(path);
      return value === undefined || (kind === "count" && open.has(id)) ? [] : [[path, value] as const];
    }),
  );
}

function withValues(pattern: PatternDocument, values: Values): PatternDocument {
  return patternDocumentSchema.parse(
    [...values].reduce<unknown>((into, [path, value]) => withValueAt(into, path.split("."), value), pattern),
  );
}
