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
 * Reads a pattern being edited as the document that it stands for.
 *
 * @param draft numbers as they were, or as typed: a decimal comma, a fraction and a unit behind a length are understood.
 * @param unit unit of lengths without one.
 * @returns the document, lengths in cm; or what is wrong, each by its path in the draft, at most 100.
 */
export function readDraft(draft: DraftPattern, unit: LengthUnit): ReadDraft {
  const parsed = parseWith(readingSchema(unit), draft, (pattern) => [
    ...patternFaults(pattern),
    ...patternRangeFaults(pattern, { unit }),
  ]);
  return parsed.ok ? { document: parsed.document, faults: [] } : { document: null, faults: parsed.faults };
}

const schemas = { cm: makeReadingSchema("cm"), in: makeReadingSchema("in") };

/** The document's own schema behind a reading of what was typed. */
export function readingSchema(unit: LengthUnit): ReturnType<typeof makeReadingSchema> {
  return schemas[unit];
}

function makeReadingSchema(unit: LengthUnit) {
  const { number, positive, whole, anyWhole, positiveWhole, length, positiveLength, notNegativeLength, ...rest } =
    documentParts;
  const asNumber = reading((text) => {
    const read = parseNumber(text);
    return read.ok ? read.value : read.message;
  });
  const asLength = reading((text) => {
    const read = parseLength(text, unit);
    return read.ok ? read.cm : read.message;
  });
  return patternShape({
    ...rest,
    number: asNumber.pipe(number),
    positive: asNumber.pipe(positive),
    whole: asNumber.pipe(whole),
    anyWhole: asNumber.pipe(anyWhole),
    positiveWhole: asNumber.pipe(positiveWhole),
    length: asLength.pipe(length),
    positiveLength: asLength.pipe(positiveLength),
    notNegativeLength: asLength.pipe(notNegativeLength),
    name: z.string().min(1, { error: "is still to be chosen." }),
  });
}

/** @param read the number in a text, or a sentence that says what is wrong with it. */
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
