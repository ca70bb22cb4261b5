import fc from "fast-check";
import { afterAll, describe, expect, it } from "vitest";
import {
  applyChanges,
  applyEdits,
  editFields,
  patternChanges,
  readDraft,
  spreadOverSizes,
  type DraftPattern,
} from "@/engine/editing";
import { ownValue, type PatternDocument } from "@/engine/pattern";
import { saltmarshPattern } from "../../../prisma/demo/saltmarsh-pattern";
import { anyPattern } from "./any-pattern";

const RUNS = 500;
const ran = { several: 0, alone: 0, read: 0, refused: 0 };

afterAll(() => {
  console.log("edits", ran);
  expect(Math.min(...Object.values(ran))).toBeGreaterThan(RUNS / 10);
});

const pathsBetween = (before: DraftPattern, after: DraftPattern) =>
  patternChanges(before, after).map(({ path }) => path);

/** One number for all sizes is the same as this number in each. */
function inEverySize(pattern: DraftPattern): DraftPattern {
  const { lengths, allowances, measurements } = pattern;
  return {
    ...pattern,
    ...(lengths && { lengths: lengths.map((item) => ({ ...item, cm: spreadOverSizes(pattern, item.cm) })) }),
    allowances: allowances.map((item) => ({ ...item, cm: spreadOverSizes(pattern, item.cm) })),
    measurements: measurements.map((measurement) => {
      const { target } = measurement;
      if (target === undefined || "cm" in target) return measurement;
      return { ...measurement, target: { ...target, easeCm: spreadOverSizes(pattern, target.easeCm) } };
    }),
  };
}

describe("the changes between two patterns", () => {
  it("make the second of the first", () => {
    fc.assert(
      fc.property(anyPattern, anyPattern, (before, after) => {
        const paths = pathsBetween(before, after);
        expect(new Set(paths).size).toBe(paths.length);
        expect(inEverySize(applyChanges(before, after, paths))).toEqual(inEverySize(after));
        if (paths.length > 1) ran.several += 1;
      }),
      { numRuns: RUNS },
    );
  });

  it("can be chosen one by one, and those left over then make the second", () => {
    fc.assert(
      fc.property(anyPattern, anyPattern, fc.infiniteStream(fc.boolean()), (before, after, chosen) => {
        const some = pathsBetween(before, after).filter(() => chosen.next().value);
        const between = applyChanges(before, after, some);
        expect(pathsBetween(between, after).filter((path) => some.includes(path))).toEqual([]);
        expect(inEverySize(applyChanges(between, after, pathsBetween(between, after)))).toEqual(inEverySize(after));
        if (some.length > 0) ran.alone += 1;
      }),
      { numRuns: RUNS },
    );
  });
});

const texts = fc.constantFrom("12", "7,5", " 3 1/2 in", "-2", "0", "about two", "", "98 cm", "40", "2000001", "9000");

describe("numbers typed for a correction", () => {
  const fields = editFields(saltmarshPattern);

  it.each(["cm", "in"] as const)("make what the same numbers make in the editor, in %s", (unit) => {
    fc.assert(
      fc.property(fc.subarray(fields, { minLength: 1, maxLength: 4 }), fc.infiniteStream(texts), (some, stream) => {
        const typed = Object.fromEntries(some.map(({ path }) => [path, stream.next().value]));
        const applied = applyEdits(saltmarshPattern, typed, unit);
        const edited = readDraft(inEditor(typed), unit);
        expect(applied.faults.length === 0).toBe(edited.document !== null);
        if (edited.document === null) ran.refused += 1;
        else {
          expect(applied.document).toEqual(edited.document);
          ran.read += 1;
        }
      }),
      { numRuns: RUNS / 2 },
    );
  });
});

/** The demonstration's pattern with the texts as somebody types them in the editor's cells. */
function inEditor(typed: Readonly<Record<string, string>>): DraftPattern {
  const { grading, lengths, allowances, measurements, ...rest } = saltmarshPattern;
  const at = (path: string, was: number) => ownValue(typed, path) ?? was;
  const forSizes = (path: string, cm: PatternDocument["allowances"][number]["cm"]) =>
    typeof cm === "number" ? at(path, cm) : bySize(path, cm);
  const bySize = (path: string, numbers: Readonly<Record<string, number>>) =>
    Object.fromEntries(Object.entries(numbers).map(([size, was]) => [size, at(`${path}.${size}`, was)]));
  return {
    ...rest,
    grading: Object.fromEntries(
      Object.entries(grading ?? {}).map(([count, numbers]) => [count, bySize(`grading.${count}`, numbers)]),
    ),
    lengths: (lengths ?? []).map((item) => ({ ...item, cm: forSizes(`lengths.${item.id}.cm`, item.cm) })),
    allowances: allowances.map((item) => ({ ...item, cm: forSizes(`allowances.${item.id}.cm`, item.cm) })),
    measurements: measurements.map((measurement) => {
      const { id, target } = measurement;
      const path = `measurements.${id}.target`;
      if (target === undefined) return measurement;
      if ("cm" in target) return { ...measurement, target: { cm: bySize(`${path}.cm`, target.cm) } };
      return { ...measurement, target: { ...target, easeCm: forSizes(`${path}.easeCm`, target.easeCm) } };
    }),
  };
}
