import { z } from "zod";
import {
  documentParts,
  parseWith,
  patternFaults,
  patternRangeFaults,
  patternShape,
  type Fault,
  type PatternDocument,
} from "../pattern";
import { parseLength, parseNumber, type LengthUnit } from "../units";
import type { DraftPattern } from "./draft-pattern";

export interface ReadDraft {
  /** Null where there are faults. */
  readonly document: PatternDocument | null;
  readonly faults: readonly Fault[];
}

/**
 * Reads a draft as a pattern document.
 *
 * @param draft numbers unchanged, or as typed: with a decimal comma, a fraction, or a unit after a length.
 * @param unit unit of lengths without one.
 * @returns the document, lengths in cm; or its faults by path in the draft, at most 100.
 */
export function readDraft(draft: DraftPattern, unit: LengthUnit): ReadDraft {
  const parsed = parseWith(readingSchema(unit), draft, (pattern) => [
    ...patternFaults(pattern),
    ...patternRangeFaults(pattern, { unit }),
  ]);
  return parsed.ok ? { document: parsed.document, faults: [] } : { document: null, faults: parsed.faults };
}

const schemas = { cm: makeReadingSchema("cm"), in: makeReadingSchema("in") };

/** The document's schema, preceded by parsing of typed texts. */
export function readingSchema(unit: LengthUnit): ReturnType<typeof makeReadingSchema> {
  return schemas[unit];
}

/** The document's numbers and lengths, preceded by parsing of typed texts. */
export function typedParts(unit: LengthUnit) {
  const { number, positive, whole, anyWhole, positiveWhole, length, positiveLength, notNegativeLength } = documentParts;
  const { inStep, factor, rate } = documentParts;
  const asNumber = reading((text) => {
    const read = parseNumber(text);
    return read.ok ? read.value : read.message;
  });
  const asLength = reading((text) => {
    const read = parseLength(text, unit);
    return read.ok ? read.cm : read.message;
  });
  return {
    number: asNumber.pipe(number),
    positive: asNumber.pipe(positive),
    whole: asNumber.pipe(whole),
    anyWhole: asNumber.pipe(anyWhole),
    positiveWhole: asNumber.pipe(positiveWhole),
    length: asLength.pipe(length),
    positiveLength: asLength.pipe(positiveLength),
    notNegativeLength: asLength.pipe(notNegativeLength),
    inStep: asNumber.pipe(inStep),
    factor: asNumber.pipe(factor),
    rate: asNumber.pipe(rate),
  };
}

function makeReadingSchema(unit: LengthUnit) {
  const name = z.string().min(1, { error: "has not been chosen yet." });
  return patternShape({ ...documentParts, ...typedParts(unit), name });
}

/** @param read parses a text to a number, or to a sentence about what is wrong with it. */
function reading(read: (text: string) => number | string): z.ZodPipe<z.ZodUnknown, z.ZodTransform<number, unknown>> {
  return z.unknown().transform((value, context): number => {
    if (typeof value === "number") return value;
    const result = typeof value === "string" ? read(value) : undefined;
    if (typeof result === "number") return result;
    if (result === undefined) context.addIssue({ code: "invalid_type", expected: "number", input: value });
    else context.addIssue({ code: "custom", message: result, input: value });
    return z.NEVER;
  });
}

/** A fault as a sentence below its field: faults are the second half of a sentence whose subject is the field. */
export function faultSentence(says: string): string {
  if (says.startsWith("is missing")) return "A number is missing here.";
  const text = says.startsWith("is ") || says.startsWith("must ") || says.startsWith("should ") ? `This ${says}` : says;
  return text.charAt(0).toUpperCase() + text.slice(1);
}
