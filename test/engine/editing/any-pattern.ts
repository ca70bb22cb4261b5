import fc from "fast-check";
import { patternDraftSchema, type DraftPattern, type Typed } from "@/engine/editing";
import { widthTyped } from "../../factories/pattern";

/** Some are also keys of documents, or of every object. */
const IDS = ["order", "constructor", "body", "cm", "hem"];
const SIZES = ["small", "large", "body"];

const draft = widthTyped("98");
const typed = fc.oneof(fc.integer({ min: 1, max: 9 }), fc.constantFrom("1,5", "2 in", ""));
const label = fc.constantFrom("One name", "Another");

/** Patterns being edited in which anything may differ: the lists and their order, what is left out, and by size or not. */
export const anyPattern: fc.Arbitrary<DraftPattern> = fc
  .shuffledSubarray(SIZES, { minLength: 1 })
  .chain((sizes) =>
    fc.record(
      {
        name: label,
        sizes: listOf(sizes, { body: byKey(["bust", "body"]) }),
        fabrics: items(
          { toolMm: typed, gauge: fc.record({ stitches: typed, rows: typed }), settles: acrossAlong },
          "settles",
        ),
        counts: items(counted(sizes), "repeat", "locked", "least", "mayShrink"),
        ties: fc.array(fc.record({ count: fc.constantFrom(...IDS), equals: fc.constant([]) }), { maxLength: 2 }),
        lengths: items({ cm: forSizes(sizes) }).filter((list) => list.length > 0),
        allowances: items({ cm: forSizes(sizes) }),
        measurements: items(measured(sizes), "target"),
        grading: fc.dictionary(fc.constantFrom(...IDS), byKey(sizes), { minKeys: 1, noNullPrototype: true }),
        instructions: label,
      },
      { requiredKeys: ["name", "sizes", "fabrics", "counts", "ties", "allowances", "measurements"] },
    ),
  )
  .map((parts) => {
    const { lengths: _lengths, grading: _grading, ...rest } = draft.pattern;
    return patternDraftSchema.parse({ ...draft, pattern: { ...rest, ...parts } }).pattern;
  });

const acrossAlong = fc.record({ across: typed, along: typed });

function byKey(keys: readonly string[]): fc.Arbitrary<Record<string, Typed>> {
  return fc.record(Object.fromEntries(keys.map((key) => [key, typed])));
}

function forSizes(sizes: readonly string[]) {
  return fc.oneof(typed, byKey(sizes));
}

function counted(sizes: readonly string[]) {
  return {
    fabric: fc.constantFrom("main", "lace"),
    direction: fc.constantFrom("stitches", "rows"),
    repeat: fc.record({ of: typed, plus: typed }),
    locked: byKey(sizes.slice(0, 1)),
    least: typed,
    mayShrink: fc.boolean(),
  };
}

function measured(sizes: readonly string[]) {
  const ease = { body: fc.constantFrom("bust", "body"), share: typed, easeCm: forSizes(sizes) };
  return {
    letter: fc.constant("A"),
    how: label,
    toleranceCm: typed,
    terms: fc.array(fc.record({ times: typed, count: fc.constantFrom(...IDS) }), { maxLength: 2 }),
    target: fc.oneof(fc.record({ cm: byKey(sizes) }), fc.record(ease, { requiredKeys: ["body", "easeCm"] })),
  };
}

type Members = Readonly<Record<string, fc.Arbitrary<unknown>>>;

/** A list with some of the ids in any order. */
function items(members: Members, ...left: readonly string[]) {
  return fc.shuffledSubarray(IDS).chain((ids) => listOf(ids, members, ...left));
}

/** @param left keys of the members that may be left out. */
function listOf(ids: readonly string[], members: Members, ...left: readonly string[]) {
  const required = ["id", "label", ...Object.keys(members).filter((key) => !left.includes(key))];
  return fc.tuple(
    ...ids.map((id) =>
      fc.record<Record<string, unknown>>({ id: fc.constant(id), label, ...members }, { requiredKeys: required }),
    ),
  );
}
