import { describe, expect, it } from "vitest";
import {
  applyChanges,
  createDraft,
  draftInUnit,
  draftQuestions,
  oneForAllSizes,
  patternChanges,
  patternDraftSchema,
  readablePart,
  readDraft,
  spreadOverSizes,
  withoutSize,
  withSize,
  type DraftPattern,
} from "@/engine/editing";
import { MAX_SIZES } from "@/engine/pattern";
import { finishedMeasurements } from "@/engine/prediction";
import { saltmarshPattern } from "../../../prisma/demo/saltmarsh-pattern";

const { pattern: untouched } = createDraft(saltmarshPattern, "cm");

function withCount(pattern: DraftPattern, id: string, change: Partial<DraftPattern["counts"][number]>): DraftPattern {
  return { ...pattern, counts: pattern.counts.map((count) => (count.id === id ? { ...count, ...change } : count)) };
}

describe("a pattern being edited", () => {
  it("reads back as the document it began with", () => {
    expect(readDraft(untouched, "cm")).toEqual({ document: saltmarshPattern, faults: [] });
  });

  it("reads what people type: a decimal comma, a fraction, a unit behind a length", () => {
    const allowances = [
      { id: "edging", label: "Edging", cm: { ...spreadOverSizes(untouched, "1,5"), "size-m": "1/2 in" } },
    ];
    const { document } = readDraft({ ...untouched, measurements: [], allowances }, "cm");
    // By hand: half an inch is 1.27 cm.
    expect(document?.allowances[0]?.cm).toMatchObject({ "size-s": 1.5, "size-m": 1.27 });
  });

  it("reads a length without a unit in the unit of the draft, and a count in none", () => {
    const typed = { ...untouched, allowances: [{ id: "edging", label: "Edging", cm: "1" }], measurements: [] };
    expect(readDraft(typed, "in").document?.allowances[0]?.cm).toBe(2.54);
    expect(readDraft(withCount(untouched, "neck", { least: "1" }), "in").document?.counts[2]?.least).toBe(1);
  });

  it.each<[string, DraftPattern, string, RegExp]>([
    [
      "a word for a number",
      withCount(untouched, "body", { least: "many" }),
      "counts[0].least",
      /“many” is not a number/,
    ],
    ["a repeat of 0", withCount(untouched, "body", { repeat: { of: "0", plus: 0 } }), "counts[0].repeat.of", /above 0/],
    ["half a stitch", withCount(untouched, "body", { least: "2.5" }), "counts[0].least", /whole number/],
    [
      "a fabric that is not chosen",
      withCount(untouched, "body", { fabric: "" }),
      "counts[0].fabric",
      /has not been chosen yet/,
    ],
    ["a fabric that is gone", withCount(untouched, "body", { fabric: "rib" }), "counts[0].fabric", /no fabric “rib”/],
    [
      "gauge zero",
      { ...untouched, fabrics: untouched.fabrics.map((fabric) => ({ ...fabric, gauge: { stitches: "0", rows: 30 } })) },
      "fabrics[0].gauge.stitches",
      /above 0/,
    ],
    [
      "a measurement without terms",
      { ...untouched, measurements: untouched.measurements.map((each) => ({ ...each, terms: [] })) },
      "measurements[0].terms",
      /at least one term/,
    ],
    [
      "a size without the body measurement that a target names",
      {
        ...untouched,
        sizes: untouched.sizes.map((size, index) => (index === 2 ? { ...size, body: { bust: 94 } } : size)),
      },
      "measurements[4].target.body",
      /“upper-arm” is missing in size M/,
    ],
    [
      "a number that one size lacks",
      { ...untouched, allowances: [{ id: "hem", label: "Hem", cm: { "size-xs": 1 } }], measurements: [] },
      "allowances[0].cm.size-s",
      /is missing/,
    ],
  ])("tells %s at its place", (_what, draft, path, says) => {
    const { document, faults } = readDraft(draft, "cm");
    expect(document).toBeNull();
    expect(faults.find((fault) => fault.path === path)?.says).toMatch(says);
  });

  it("allows 25 sizes, and reports that they are too many", () => {
    const sizes = Array.from({ length: MAX_SIZES + 1 }, (_, index) => ({
      id: `s${index}`,
      label: `S${index}`,
      body: { bust: 80 + index },
    }));
    const draft = { ...untouched, sizes, measurements: [], grading: {} };
    expect(patternDraftSchema.safeParse({ ...createDraft(saltmarshPattern, "cm"), pattern: draft }).success).toBe(true);
    expect(readDraft(draft, "cm").faults).toEqual([{ path: "sizes", says: "must hold at most 24 sizes." }]);
  });
});

describe("the readable part of a draft", () => {
  it("leaves out a measurement whose count is gone, and keeps the rest", () => {
    const counts = untouched.counts.filter(({ id }) => id !== "sleeve-top");
    const { "sleeve-top": _gone, ...grading } = saltmarshPattern.grading ?? {};
    const rest = readablePart({ ...untouched, counts, grading }, "cm");
    expect(rest?.measurements.map(({ letter }) => letter)).toEqual(["A", "B", "C", "D", "F", "G", "H"]);
    const start = untouched.garment.steps.find((step) => step.do === "start" && step.in.part === "sleeve");
    expect(start).toBeDefined();
    expect(rest?.garment.steps.map(({ id }) => id)).not.toContain(start?.id);
  });

  it("leaves a size without its number open, and the other sizes as they are", () => {
    const grading = { ...untouched.grading, body: { ...untouched.grading?.["body"], "size-m": "" } };
    const rest = readablePart({ ...untouched, grading }, "cm");
    const bust = rest && finishedMeasurements(rest)[0];
    expect(bust?.sizes.filter(({ designCm }) => designCm === null).map(({ size }) => size)).toEqual(["size-m"]);
  });

  it("drops a rule that cannot be read, not the count", () => {
    const rest = readablePart(withCount(untouched, "body", { repeat: { of: "", plus: 0 } }), "cm");
    expect(rest?.counts).toHaveLength(untouched.counts.length);
    expect(rest?.counts[0]?.repeat).toBeUndefined();
  });

  it("has no readable part without a gauge", () => {
    const fabrics = untouched.fabrics.map((fabric) => ({ ...fabric, gauge: { stitches: "", rows: "30" } }));
    expect(readablePart({ ...untouched, fabrics }, "cm")).toBeNull();
  });
});

describe("sizes of a draft", () => {
  it("are removed with everything that depends on them", () => {
    const pattern = withoutSize(untouched, "size-5x");
    expect(readDraft(pattern, "cm").document?.sizes).toHaveLength(8);
  });

  it("ask for their numbers when they are new", () => {
    const { faults } = readDraft(withSize(untouched, { id: "size-6x", label: "6X" }), "cm");
    expect(faults.map(({ path }) => path)).toContain("grading.body.size-6x");
  });

  it("may share one number, or have one each", () => {
    const each = spreadOverSizes(untouched, "-1");
    expect(Object.keys(each)).toHaveLength(9);
    expect(oneForAllSizes(untouched, each)).toBe("-1");
  });
});

describe("an odd number", () => {
  it("is questioned until it is confirmed, and again when it changes", () => {
    const [seam] = saltmarshPattern.allowances.slice(2);
    const document = {
      ...saltmarshPattern,
      allowances: [
        ...saltmarshPattern.allowances.slice(0, 2),
        { ...seam, id: "sleeve-seam", label: "Sleeve seam", cm: -30 },
      ],
    };
    const path = "allowances.sleeve-seam.cm";
    expect(draftQuestions(saltmarshPattern, document, {})).toMatchObject([{ path, value: -30, meant: false }]);
    expect(draftQuestions(saltmarshPattern, document, { [path]: -30 })).toMatchObject([{ meant: true }]);
    expect(draftQuestions(saltmarshPattern, document, { [path]: -40 })).toMatchObject([{ meant: false }]);
  });
});

describe("two people's drafts", () => {
  const mine: DraftPattern = {
    ...withCount(untouched, "body", { repeat: { of: "6", plus: 0 } }),
    allowances: untouched.allowances.map((item) => (item.id === "sleeve-seam" ? { ...item, cm: "-2" } : item)),
    lengths: [...(untouched.lengths ?? []), { id: "collar", label: "Collar", cm: "4" }],
    grading: { ...untouched.grading, neck: { ...untouched.grading?.["neck"], "size-m": "64" } },
  };
  const theirs: DraftPattern = { ...untouched, name: "Another name" };

  it("differ by what one of them changed, and each change can be applied alone", () => {
    const changes = patternChanges(theirs, mine);
    expect(changes.map(({ path }) => path).toSorted()).toEqual([
      "allowances.sleeve-seam.cm",
      "counts.body.repeat.of",
      "grading.neck.size-m",
      "lengths.collar.cm",
      "name",
    ]);
    const merged = applyChanges(theirs, mine, ["grading.neck.size-m", "lengths.collar.cm"]);
    expect(merged.grading?.["neck"]?.["size-m"]).toBe("64");
    expect(merged.lengths?.at(-1)).toEqual({ id: "collar", label: "Collar", cm: "4" });
    expect(merged.name).toBe("Another name");
    expect(merged.counts).toEqual(untouched.counts);
  });

  it("become equal when every change is applied", () => {
    const paths = patternChanges(theirs, mine).map(({ path }) => path);
    expect(applyChanges(theirs, mine, paths)).toEqual(mine);
  });

  it("mean the same lengths in another unit", () => {
    const draft = {
      ...createDraft(saltmarshPattern, "in"),
      pattern: { ...untouched, allowances: [{ id: "hem", label: "Hem", cm: "1" }], measurements: [] },
    };
    const inCm = draftInUnit(draft, "cm");
    expect(inCm.pattern.allowances[0]?.cm).toBe("1 in");
    expect(readDraft(inCm.pattern, "cm").document).toEqual(readDraft(draft.pattern, "in").document);
  });
});
