import type { z } from "zod";
import { applicantsFaults } from "./applicants-faults";
import { applicantsSchema, type ApplicantsDocument } from "./applicants-document";
import { callFaults } from "./call-faults";
import { callSchema, type CallDocument } from "./call-document";
import { formatPath, type Fault, type PathPart } from "./faults";
import { patternFaults } from "./pattern-faults";
import { patternSchema, type PatternDocument } from "./pattern-document";
import { bodyRangeFaults, patternRangeFaults, testerRangeFaults } from "./range-faults";
import { schemaFaults } from "./schema-faults";

export type Parsed<Document> =
  { readonly ok: true; readonly document: Document } | { readonly ok: false; readonly faults: readonly Fault[] };

/** Deeper than any document of ours goes: what is nested further is refused before it is walked by anything recursive. */
const DEEPEST = 40;
const MOST_FAULTS = 100;

/** Reads a pattern document. @param value parsed JSON of any shape. @returns the document, or its faults by path. */
export function parsePattern(value: unknown): Parsed<PatternDocument> {
  return parseWith(patternSchema, value, (pattern) => [...patternFaults(pattern), ...patternRangeFaults(pattern)]);
}

/** Reads a call document. @param value parsed JSON of any shape. @returns the document, or its faults by path. */
export function parseCall(value: unknown): Parsed<CallDocument> {
  return parseWith(callSchema, value, (call) => [
    ...callFaults(call),
    ...patternRangeFaults(call.pattern, { above: ["pattern"] }),
    ...call.testers.flatMap((tester, at) => testerRangeFaults(tester, { above: ["testers", at] })),
  ]);
}

/**
 * Reads a pattern document that was taken in before: its numbers may be such as would be refused today, for what is stored
 * must still be shown.
 */
export function parseStoredPattern(value: unknown): Parsed<PatternDocument> {
  return parseWith(patternSchema, value, patternFaults);
}

/** Reads a call document made of what was taken in before, as `parseStoredPattern` does. */
export function parseStoredCall(value: unknown): Parsed<CallDocument> {
  return parseWith(callSchema, value, callFaults);
}

/** Reads an applicants document. @param value parsed JSON of any shape. @returns the document, or its faults by path. */
export function parseApplicants(value: unknown): Parsed<ApplicantsDocument> {
  return parseWith(applicantsSchema, value, (document) => [
    ...applicantsFaults(document),
    ...patternRangeFaults(document.pattern, { above: ["pattern"] }),
    ...document.applicants.flatMap(({ body }, at) => bodyRangeFaults(body, { above: ["applicants", at] })),
  ]);
}

/**
 * Reads a value of any shape by a schema, then by a check of the names in it.
 *
 * @param schema shape of the document.
 * @param value parsed JSON of any shape.
 * @param namesIn faults of a document that has the shape.
 * @returns the document, or at most 100 faults by path.
 */
export function parseWith<Schema extends z.ZodType>(
  schema: Schema,
  value: unknown,
  namesIn: (document: z.output<Schema>) => readonly Fault[],
): Parsed<z.output<Schema>> {
  const unsafe = unsafeValue(value);
  if (unsafe) return { ok: false, faults: [unsafe] };
  const parsed = schema.safeParse(value);
  const faults = parsed.success ? namesIn(parsed.data) : schemaFaults(parsed.error.issues);
  if (faults.length > 0 || !parsed.success) return { ok: false, faults: faults.slice(0, MOST_FAULTS) };
  return { ok: true, document: parsed.data };
}

/** Nesting without end, and `__proto__` as a key, which validation would pass over. */
function unsafeValue(value: unknown): Fault | undefined {
  const open: { value: unknown; path: readonly PathPart[] }[] = [{ value, path: [] }];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (typeof next.value !== "object" || next.value === null) continue;
    if (next.path.length > DEEPEST) return { path: formatPath(next.path.slice(0, 3)), says: "is nested too deep." };
    const isList = Array.isArray(next.value);
    for (const [key, child] of Object.entries(next.value)) {
      const path = [...next.path, isList ? Number(key) : key];
      if (key === "__proto__") return { path: formatPath(path), says: "is not a key of this document." };
      if (typeof child === "object" && child !== null) open.push({ value: child, path });
    }
  }
  return undefined;
}
