import { applyEdits, editFields, type AppliedEdits, type EditField } from "@/engine/editing";
import { ownValue, type Measurement, type PatternDocument, type Size, type Term } from "@/engine/pattern";
import { fromCm, type LengthUnit } from "@/engine/units";
import { cellKey } from "../gaps/gap-address";

export interface CorrectedField {
  readonly path: string;
  readonly label: string;
  /** As typed, else the pattern's own number; without the sign, which is in `way`. */
  readonly text: string;
  /** Whether an edging or seam adds or takes; null for every other number. */
  readonly way: "adds" | "takes" | null;
  readonly hint: string;
  readonly errors: readonly string[];
}

/** A correction as typed in the form, and what it does to the pattern. */
export interface Correction {
  readonly measurement: Measurement;
  readonly size: Size;
  readonly fields: readonly CorrectedField[];
  /** Texts that differ from the pattern's own numbers, by path. */
  readonly typed: Readonly<Record<string, string>>;
  readonly applied: AppliedEdits;
}

interface Asked {
  readonly cell: string | undefined;
  readonly typed: Readonly<Record<string, string>>;
  readonly unit: LengthUnit;
}

/** @returns the correction of the requested cell, null where the pattern has no such cell. */
export function correctionOf(pattern: PatternDocument, { cell, typed: texts, unit }: Asked): Correction | null {
  const found = cellOf(pattern, cell);
  if (found === null) return null;
  const used = usedFields(pattern, found);
  const typed = Object.fromEntries(
    used.flatMap((field) => {
      const text = ownValue(texts, field.path)?.trim();
      return text === undefined || text === ownText(field, unit) ? [] : [[field.path, text]];
    }),
  );
  const applied = applyEdits(pattern, typed, unit);
  return {
    ...found,
    typed,
    applied,
    fields: used.map((field) => correctedField(field, { typed, applied, unit })),
  };
}

function cellOf({ sizes, measurements }: PatternDocument, cell: string | undefined) {
  for (const size of sizes)
    for (const measurement of measurements) if (cellKey(size.id, measurement.id) === cell) return { size, measurement };
  return null;
}

function usedFields(pattern: PatternDocument, { measurement, size }: { measurement: Measurement; size: Size }) {
  const used = new Set(measurement.terms.flatMap(inputsOf));
  return editFields(pattern).filter(
    (field) => used.has(`${field.kind} ${field.id}`) && (field.size === null || field.size.id === size.id),
  );
}

function inputsOf(term: Term): string[] {
  if ("diagonal" in term) return [...term.diagonal.across, ...term.diagonal.along].flatMap(inputsOf);
  if ("count" in term) return [`count ${term.count}`];
  return "length" in term ? [`length ${term.length}`] : [`allowance ${term.allowance}`];
}

/** The pattern's own number, exact to a thousandth, as one would type it. */
function ownText({ kind, value }: EditField, unit: LengthUnit): string {
  if (value === undefined) return "";
  return kind === "count" ? String(value) : String(Math.round(fromCm(value, unit) * 1000) / 1000);
}

/** The current number in words. */
function currentWords({ kind }: EditField, was: string, unit: LengthUnit): string {
  if (kind === "count") return was;
  if (kind !== "allowance") return `${was} ${unit}`;
  return was.startsWith("-") ? `takes ${was.slice(1)} ${unit}` : `adds ${was} ${unit}`;
}

function correctedField(
  field: EditField,
  { typed, applied, unit }: { typed: Correction["typed"]; applied: AppliedEdits; unit: LengthUnit },
): CorrectedField {
  const was = ownText(field, unit);
  const text = ownValue(typed, field.path) ?? was;
  const isSigned = field.kind === "allowance" && /^[-−]/.test(text);
  return {
    path: field.path,
    label: field.label,
    text: isSigned ? text.slice(1).trim() : text,
    way: field.kind !== "allowance" ? null : isSigned ? "takes" : "adds",
    hint: `${field.size === null ? "In every size" : `In size ${field.size.label}`}, now ${currentWords(field, was, unit)}`,
    errors: applied.faults.filter(({ path }) => path === field.path).map(({ message }) => message),
  };
}
