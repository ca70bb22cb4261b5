import { CALL_FORMAT, CALL_FORMAT_2, type CallDocument, type Places, type Tester } from "./call-document";
import type { Fault, PathPart } from "./faults";
import { ownValue } from "./own-value";
import type { PatternDocument } from "./pattern-document";
import { patternFaults } from "./pattern-faults";
import { ReferenceChecker } from "./reference-checker";
import { usedCm } from "./used-values";

/**
 * Invalid references in a call, and an incomplete grading of its pattern.
 *
 * @param call a document that matches the schema.
 * @returns the faults, in the document's order; empty where there is none.
 */
export function callFaults(call: CallDocument): Fault[] {
  return [
    ...callFrameFaults(call),
    ...testersFaults(call, { from: 0, to: call.testers.length }),
    ...earlierCallsFaults(call),
  ];
}

/** The same for the calls whose reports count too, and for what was learned from others. */
export function earlierCallsFaults({ format, calls = [], prior, records }: CallDocument): Fault[] {
  const later = [
    ...(calls.length > 0 ? ["calls"] : []),
    ...(prior === undefined ? [] : ["prior"]),
    ...(records === undefined ? [] : ["records"]),
  ];
  if (later.length > 0 && format === CALL_FORMAT)
    return later.map((path) => ({ path, says: `belongs to “${CALL_FORMAT_2}”.` }));
  return calls.flatMap((call, index) =>
    callFaults(call).map(({ path, says }) => ({ path: `calls[${index}].${path}`, says })),
  );
}

/** The same for everything except the reports: the pattern, the places, and duplicate tester ids. */
export function callFrameFaults(call: CallDocument): Fault[] {
  const check = new ReferenceChecker();
  checkPlaces(check, call.places, call.pattern);
  check.everySize(["places"], call.places, new Set(call.pattern.sizes.map(({ id }) => id)));
  check.unique(["testers"], call.testers);
  return [...patternFaults(call.pattern, ["pattern"]), ...missingGrading(call.pattern, ["pattern"]), ...check.faults];
}

/** The same for the reports of some of its testers. */
export function testersFaults(
  { format, pattern, testers }: CallDocument,
  { from, to }: { from: number; to: number },
): Fault[] {
  const check = new ReferenceChecker();
  const known = testerReferences(pattern);
  testers.slice(from, to).forEach((tester, index) => {
    const path = ["testers", from + index];
    checkTester(check, tester, known, path);
    if (format === CALL_FORMAT) checkUsesNoValue(check, tester, path);
  });
  return check.faults;
}

/** Faults of one tester's report against the pattern it belongs to. */
export function testerFaults(tester: Tester, pattern: PatternDocument, path: readonly PathPart[] = []): Fault[] {
  const check = new ReferenceChecker();
  checkTester(check, tester, testerReferences(pattern), path);
  return check.faults;
}

/** Counts that have no numbers yet: a call, and every calculation, needs them all. */
export function missingGrading(pattern: PatternDocument, above: readonly PathPart[] = []): Fault[] {
  const check = new ReferenceChecker();
  for (const { id, label } of pattern.counts) {
    if (ownValue(pattern.grading, id) === undefined) {
      check.add([...above, "grading", id], `is missing; “${label}” needs a number in every size.`);
    }
  }
  return check.faults;
}

/** Unknown sizes, sizes with fewer wanted testers than their minimum, and sizes that may have fewer than are wanted. */
export function checkPlaces(check: ReferenceChecker, places: Places, pattern: PatternDocument): void {
  const sizes = new Set(pattern.sizes.map(({ id }) => id));
  check.keysExist(["places"], places, sizes, "size");
  for (const [size, { least, wanted, most = wanted }] of Object.entries(places)) {
    if (least > wanted) check.add(["places", size, "least"], `is ${least}, more than the ${wanted} wanted.`);
    if (most < wanted) check.add(["places", size, "most"], `is ${most}, fewer than the ${wanted} wanted.`);
  }
}

function checkUsesNoValue(check: ReferenceChecker, { readings }: Tester, path: readonly PathPart[]): void {
  readings.forEach(({ decision }, index) => {
    if (usedCm(decision) !== null)
      check.add([...path, "readings", index, "decision"], `can use another value only in “${CALL_FORMAT_2}”.`);
  });
}

interface TesterReferences {
  readonly sizes: ReadonlySet<string>;
  readonly fabrics: ReadonlySet<string>;
  readonly counts: ReadonlySet<string>;
  readonly lengths: ReadonlySet<string>;
  readonly measurements: ReadonlySet<string>;
  readonly yarns: ReadonlySet<string>;
  readonly body: ReadonlySet<string>;
}

function testerReferences(pattern: PatternDocument): TesterReferences {
  const ids = (items: readonly { readonly id: string }[]) => new Set(items.map(({ id }) => id));
  return {
    sizes: ids(pattern.sizes),
    fabrics: ids(pattern.fabrics),
    counts: ids(pattern.counts),
    lengths: ids(pattern.lengths ?? []),
    measurements: ids(pattern.measurements),
    yarns: ids(pattern.yarns),
    body: bodyIds(pattern),
  };
}

/** Every body measurement that the pattern names, in its explanations or in a size. */
export function bodyIds(pattern: PatternDocument): Set<string> {
  const named = (pattern.bodyMeasurements ?? []).map(({ id }) => id);
  return new Set([...named, ...pattern.sizes.flatMap(({ body }) => Object.keys(body))]);
}

function checkTester(
  check: ReferenceChecker,
  tester: Tester,
  known: TesterReferences,
  path: readonly PathPart[],
): void {
  check.exists([...path, "size"], tester.size, known.sizes, "size");
  tester.swatches.forEach(({ fabric }, index) =>
    check.exists([...path, "swatches", index, "fabric"], fabric, known.fabrics, "fabric"),
  );
  check.keysExist([...path, "worked"], tester.worked ?? {}, known.counts, "count");
  check.keysExist([...path, "workedLengths"], tester.workedLengths ?? {}, known.lengths, "length");
  tester.changed?.forEach((id, index) =>
    check.exists([...path, "changed", index], id, known.measurements, "measurement"),
  );
  tester.readings.forEach(({ measurement }, index) =>
    check.exists([...path, "readings", index, "measurement"], measurement, known.measurements, "measurement"),
  );
  tester.yarn.forEach(({ yarn }, index) => check.exists([...path, "yarn", index, "yarn"], yarn, known.yarns, "yarn"));
  tester.fit?.forEach(({ area }, index) =>
    check.exists([...path, "fit", index, "area"], area, known.body, "body measurement"),
  );
  check.keysExist([...path, "prefers"], tester.prefers ?? {}, known.body, "body measurement");
}
