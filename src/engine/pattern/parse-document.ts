import type { z } from "zod";
import { applicantsFaults } from "./applicants-faults";
import { applicantsSchema, type ApplicantsDocument } from "./applicants-document";
import { callFrameFaults, earlierCallsFaults, testersFaults } from "./call-faults";
import { callSchema, MAX_TESTERS, testerSchema, type CallDocument, type Tester } from "./call-document";
import { formatPath, type Fault, type PathPart } from "./faults";
import { patternFaults } from "./pattern-faults";
import type { PatternDocument } from "./pattern-document";
import { patternSchema } from "./pattern-schema";
import { bodyRangeFaults, patternRangeFaults, testerRangeFaults } from "./range-faults";
import { schemaFaults } from "./schema-faults";

export type Parsed<Document> =
  { readonly ok: true; readonly document: Document } | { readonly ok: false; readonly faults: readonly Fault[] };

/** Deeper than any of our documents: input nested further is rejected before anything recursive walks it. */
const MAX_DEPTH = 40;
const MAX_FAULTS = 100;

/** Reads a pattern document. @param value parsed JSON of any shape. @returns the document, or its faults by path. */
export function parsePattern(value: unknown): Parsed<PatternDocument> {
  return parseWith(patternSchema, value, (pattern) => [...patternFaults(pattern), ...patternRangeFaults(pattern)]);
}

/** Reads a call document. @param value parsed JSON of any shape. @returns the document, or its faults by path. */
export function parseCall(value: unknown): Parsed<CallDocument> {
  const steps = parseCallInSteps(value);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** Few enough to be read within a few milliseconds. */
const TESTERS_PER_STEP = 50;

/**
 * The same in many short steps, between which other requests can be served: reading twenty thousand testers takes a second.
 *
 * @returns after the last step the document, or its faults by path.
 */
export function* parseCallInSteps(value: unknown): Generator<undefined, Parsed<CallDocument>> {
  const listed = listedTesters(value);
  if (listed === null || listed.length > MAX_TESTERS) return parseWith(callSchema, value, () => []);
  const frame = parseWith(callSchema, { ...Object(value), testers: [] }, () => []);
  const read = yield* readTesters(listed);
  const faults = [...(frame.ok ? [] : frame.faults), ...read.faults];
  if (!frame.ok || faults.length > 0) return { ok: false, faults: faults.slice(0, MAX_FAULTS) };
  const document = { ...frame.document, testers: read.testers };
  const wrong = yield* namesAndRanges(document);
  return wrong.length === 0 ? { ok: true, document } : { ok: false, faults: wrong.slice(0, MAX_FAULTS) };
}

function* readTesters(listed: readonly unknown[]): Generator<undefined, { testers: Tester[]; faults: Fault[] }> {
  const testers: Tester[] = [];
  const faults: Fault[] = [];
  for (const [index, value] of listed.entries()) {
    const tester = parseTester(value, index);
    if (tester.ok) testers.push(tester.document);
    else faults.push(...tester.faults);
    if (index % TESTERS_PER_STEP === 0) yield;
  }
  return { testers, faults };
}

function* namesAndRanges(call: CallDocument): Generator<undefined, Fault[]> {
  const names = callFrameFaults(call);
  const ranges = patternRangeFaults(call.pattern, { above: ["pattern"] });
  for (let from = 0; from < call.testers.length; from += TESTERS_PER_STEP) {
    const to = from + TESTERS_PER_STEP;
    names.push(...testersFaults(call, { from, to }));
    for (const [index, tester] of call.testers.slice(from, to).entries())
      ranges.push(...testerRangeFaults(tester, { above: ["testers", from + index] }));
    yield;
  }
  return [...names, ...earlierCallsFaults(call), ...ranges, ...earlierRangeFaults(call)];
}

function earlierRangeFaults({ calls = [] }: CallDocument): Fault[] {
  return calls.flatMap(({ pattern, testers }, call) => [
    ...patternRangeFaults(pattern, { above: ["calls", call, "pattern"] }),
    ...testers.flatMap((tester, index) => testerRangeFaults(tester, { above: ["calls", call, "testers", index] })),
  ]);
}

function listedTesters(value: unknown): readonly unknown[] | null {
  if (typeof value !== "object" || value === null || !("testers" in value)) return null;
  return Array.isArray(value.testers) ? value.testers : null;
}

function parseTester(value: unknown, index: number): Parsed<Tester> {
  const above = ["testers", index];
  const unsafe = unsafeValue(value, above);
  if (unsafe) return { ok: false, faults: [unsafe] };
  const parsed = testerSchema.safeParse(value);
  return parsed.success
    ? { ok: true, document: parsed.data }
    : { ok: false, faults: schemaFaults(parsed.error.issues, above) };
}

/**
 * Reads a pattern document that was stored before: its numbers may be outside today's ranges, because what is stored
 * must still be shown.
 */
export function parseStoredPattern(value: unknown): Parsed<PatternDocument> {
  return parseWith(patternSchema, value, patternFaults);
}

/** Reads an applicants document. @param value parsed JSON of any shape. @returns the document, or its faults by path. */
export function parseApplicants(value: unknown): Parsed<ApplicantsDocument> {
  return parseWith(applicantsSchema, value, (document) => [
    ...applicantsFaults(document),
    ...patternRangeFaults(document.pattern, { above: ["pattern"] }),
    ...document.applicants.flatMap(({ body }, index) => bodyRangeFaults(body, { above: ["applicants", index] })),
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
  if (faults.length > 0 || !parsed.success) return { ok: false, faults: faults.slice(0, MAX_FAULTS) };
  return { ok: true, document: parsed.data };
}

/** Excessive nesting, and `__proto__` as a key, which validation would ignore. */
function unsafeValue(value: unknown, above: readonly PathPart[] = []): Fault | undefined {
  const open: { value: unknown; path: readonly PathPart[] }[] = [{ value, path: above }];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (typeof next.value !== "object" || next.value === null) continue;
    if (next.path.length > MAX_DEPTH) return { path: formatPath(next.path.slice(0, 3)), says: "is nested too deep." };
    const isList = Array.isArray(next.value);
    for (const [key, child] of Object.entries(next.value)) {
      const path = [...next.path, isList ? Number(key) : key];
      if (key === "__proto__") return { path: formatPath(path), says: "is not a key of this document." };
      if (typeof child === "object" && child !== null) open.push({ value: child, path });
    }
  }
  return undefined;
}
