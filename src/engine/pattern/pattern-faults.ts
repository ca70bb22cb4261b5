import type { Fault, PathPart } from "./faults";
import { ownValue } from "./own-value";
import { garmentFaults } from "./garment-faults";
import type { FlatTerm, Measurement, PatternDocument, Term } from "./pattern-document";
import { ReferenceChecker } from "./reference-checker";

interface Known {
  readonly sizes: ReadonlySet<string>;
  readonly fabrics: ReadonlySet<string>;
  readonly counts: ReadonlySet<string>;
  readonly lengths: ReadonlySet<string>;
  readonly allowances: ReadonlySet<string>;
}

/**
 * Invalid references in a pattern: unknown or duplicate ids, records by size that lack a size.
 *
 * @param pattern a document that matches the schema.
 * @param above path of the pattern inside a larger document.
 * @returns the faults, in the document's order; empty where there is none.
 */
export function patternFaults(pattern: PatternDocument, above: readonly PathPart[] = []): Fault[] {
  const check = new ReferenceChecker();
  const known = knownIds(check, pattern, above);
  checkSizes(check, pattern, above);
  checkCounts(check, pattern, known, above);
  (pattern.lengths ?? []).forEach(({ cm, fabric }, index) => {
    check.everySize([...above, "lengths", index, "cm"], cm, known.sizes);
    if (fabric !== undefined) check.exists([...above, "lengths", index, "fabric"], fabric, known.fabrics, "fabric");
  });
  pattern.allowances.forEach(({ cm }, index) =>
    check.everySize([...above, "allowances", index, "cm"], cm, known.sizes),
  );
  garmentFaults(check, pattern, above);
  pattern.measurements.forEach((measurement, index) =>
    checkMeasurement(check, { measurement, pattern, known, path: [...above, "measurements", index] }),
  );
  checkGrading(check, pattern, known, above);
  return check.faults;
}

function knownIds(check: ReferenceChecker, pattern: PatternDocument, above: readonly PathPart[]): Known {
  if (pattern.bodyMeasurements) check.unique([...above, "bodyMeasurements"], pattern.bodyMeasurements);
  check.unique([...above, "measurements"], pattern.measurements);
  check.unique([...above, "yarns"], pattern.yarns);
  return {
    sizes: check.unique([...above, "sizes"], pattern.sizes),
    fabrics: check.unique([...above, "fabrics"], pattern.fabrics),
    counts: check.unique([...above, "counts"], pattern.counts),
    lengths: check.unique([...above, "lengths"], pattern.lengths ?? []),
    allowances: check.unique([...above, "allowances"], pattern.allowances),
  };
}

function checkSizes(check: ReferenceChecker, pattern: PatternDocument, above: readonly PathPart[]): void {
  pattern.sizes.forEach((size, index) => {
    if (ownValue(size.body, pattern.sizeBy) === undefined) {
      check.add([...above, "sizes", index, "body", pattern.sizeBy], "is missing, and sizes are ordered by it.");
    }
  });
}

function checkCounts(
  check: ReferenceChecker,
  pattern: PatternDocument,
  known: Known,
  above: readonly PathPart[],
): void {
  pattern.counts.forEach((count, index) => {
    const path = [...above, "counts", index];
    check.exists([...path, "fabric"], count.fabric, known.fabrics, "fabric");
    if (count.locked) check.keysExist([...path, "locked"], count.locked, known.sizes, "size");
  });
  pattern.ties.forEach((tie, index) => {
    const path = [...above, "ties", index];
    check.exists([...path, "count"], tie.count, known.counts, "count");
    tie.equals.forEach((part, index) =>
      check.exists([...path, "equals", index, "count"], part.count, known.counts, "count"),
    );
  });
}

function checkMeasurement(
  check: ReferenceChecker,
  given: { measurement: Measurement; pattern: PatternDocument; known: Known; path: readonly PathPart[] },
): void {
  const { measurement, known, path } = given;
  measurement.terms.forEach((term, index) => checkTerm(check, term, known, [...path, "terms", index]));
  checkTarget(check, given);
}

function checkTerm(check: ReferenceChecker, term: Term, known: Known, path: readonly PathPart[]): void {
  if (!("diagonal" in term)) return checkFlatTerm(check, term, known, path);
  for (const side of ["across", "along"] as const) {
    term.diagonal[side].forEach((part, index) => checkFlatTerm(check, part, known, [...path, "diagonal", side, index]));
  }
}

function checkFlatTerm(check: ReferenceChecker, term: FlatTerm, known: Known, path: readonly PathPart[]): void {
  if ("count" in term) check.exists([...path, "count"], term.count, known.counts, "count");
  else if ("length" in term) check.exists([...path, "length"], term.length, known.lengths, "length");
  else check.exists([...path, "allowance"], term.allowance, known.allowances, "allowance");
}

function checkTarget(
  check: ReferenceChecker,
  {
    measurement,
    pattern,
    known,
    path,
  }: { measurement: Measurement; pattern: PatternDocument; known: Known; path: readonly PathPart[] },
): void {
  const target = measurement.target;
  if (target === undefined) return;
  if ("cm" in target) return check.everySize([...path, "target", "cm"], target.cm, known.sizes);
  check.everySize([...path, "target", "easeCm"], target.easeCm, known.sizes);
  const missing = pattern.sizes.filter((size) => ownValue(size.body, target.body) === undefined);
  if (missing.length > 0) {
    const labels = missing.map(({ label }) => label).join(", ");
    check.add([...path, "target", "body"], `the body measurement “${target.body}” is missing in size ${labels}.`);
  }
}

function checkGrading(
  check: ReferenceChecker,
  pattern: PatternDocument,
  known: Known,
  above: readonly PathPart[],
): void {
  for (const [count, values] of Object.entries(pattern.grading ?? {})) {
    const path = [...above, "grading", count];
    check.exists(path, count, known.counts, "count");
    check.everySize(path, values, known.sizes);
  }
}
