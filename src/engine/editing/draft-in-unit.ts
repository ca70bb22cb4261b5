import { z } from "zod";
import { patternShape } from "../pattern";
import { parseLength, type LengthUnit } from "../units";
import { draftParts, type PatternDraft, type Typed } from "./draft-pattern";

/** The same draft in another unit: lengths typed without a unit get the old one appended. */
export function draftInUnit(draft: PatternDraft, unit: LengthUnit): PatternDraft {
  if (draft.unit === unit) return draft;
  return { ...draft, unit, pattern: inUnit[draft.unit].parse(draft.pattern) };
}

const inUnit = { cm: schemaInUnit("cm"), in: schemaInUnit("in") };

function schemaInUnit(unit: LengthUnit) {
  const withUnit = z
    .union([z.number(), z.string()])
    .transform((typed): Typed => (typeof typed === "number" || namesUnit(typed) ? typed : `${typed} ${unit}`));
  return patternShape({ ...draftParts, length: withUnit, positiveLength: withUnit, notNegativeLength: withUnit });
}

function namesUnit(text: string): boolean {
  const asCm = parseLength(text, "cm");
  const asInches = parseLength(text, "in");
  return !asCm.ok || !asInches.ok || asCm.unit === asInches.unit;
}
