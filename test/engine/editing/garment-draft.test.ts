import { describe, expect, it } from "vitest";
import {
  applyChanges,
  createDraft,
  patternChanges,
  patternDraftSchema,
  readDraft,
  workDraft,
  type DraftPattern,
} from "@/engine/editing";
import { upgradePattern } from "@/engine/pattern";
import { garmentPattern } from "../../factories/garment-pattern";
import { patternDocument1 } from "../../factories/pattern";
import { piecedPattern1 } from "../../factories/pieced-pattern";

const vest = garmentPattern({
  counts: { width: ["stitches", 40, 50], rows: ["rows", 20, 24] },
  pieces: [{ id: "front", label: "Front" }, { id: "back" }],
  steps: [
    { id: "cast-on", in: "front", do: "start", how: "cast-on", stitches: { count: "width" }, worked: "flat" },
    { id: "body", in: "front", do: "work", rows: { count: "rows" } },
    { id: "top", in: "front", do: "end", how: "bind-off", edge: "front-top" },
    { id: "back-on", in: "back", do: "start", how: "cast-on", stitches: 10, worked: "flat" },
    { id: "back-rows", in: "back", do: "work", rows: 4 },
    { id: "back-top", in: "back", do: "end", how: "bind-off", edge: "back-top" },
  ],
});

function withStep(id: string, change: object): DraftPattern {
  const steps = vest.garment.steps.map((step) => (step.id === id ? { ...step, ...change } : step));
  return patternDraftSchema.parse({
    ...createDraft(vest, "cm"),
    pattern: { ...vest, garment: { ...vest.garment, steps } },
  }).pattern;
}

describe("a draft that was stored of a pattern of format 1", () => {
  it("is read as one of format 2, whatever is typed in it", () => {
    const pattern = piecedPattern1();
    const draft = { unit: "cm", pattern, meant: {}, solved: [] };
    expect(patternDraftSchema.parse(draft).pattern).toEqual(upgradePattern(pattern));
    const [body] = pattern.pieces;
    const typed = { ...body, made: "2 or 3", yarn: "", sections: [{ from: "", to: "width", rows: "nowhere" }] };
    const { garment } = patternDraftSchema.parse({ ...draft, pattern: { ...pattern, pieces: [typed] } }).pattern;
    expect(garment.pieces).toMatchObject([{ id: "body", made: "2 or 3", yarn: "" }]);
    expect(garment.steps[1]).toMatchObject({ do: "section", from: { count: "" }, rows: { count: "nowhere" } });
  });

  it("is not read where it is neither", () => {
    const draft = { unit: "cm", pattern: { ...patternDocument1(), format: "sizewright/pattern@3" } };
    expect(patternDraftSchema.safeParse({ ...draft, meant: {}, solved: [] }).success).toBe(false);
  });
});

describe("a garment that is being edited", () => {
  it("has its numbers as they are typed, and faults at their inputs", () => {
    const typed = withStep("body", {
      rows: "21",
      shape: [{ at: "both", stitches: "1 1/2", times: "", as: "decrease" }],
    });
    expect(readDraft(typed, "cm").faults.map(({ path, says }) => `${path} ${says}`)).toEqual([
      "garment.steps[1].shape[0].stitches should be a whole number or name a count.",
      "garment.steps[1].shape[0].times should be a whole number or name a count.",
    ]);
    const whole = readDraft(withStep("body", { rows: "21" }), "cm").document;
    expect(whole?.garment.steps[1]).toMatchObject({ rows: 21 });
    expect(readDraft(withStep("body", { rows: { count: "" } }), "cm").faults).toEqual([
      { path: "garment.steps[1].rows.count", says: "has not been chosen yet." },
    ]);
  });

  it("is worked up to what cannot be read, and its other pieces whole", () => {
    const worked = workDraft({
      ...{ readable: vest, garment: withStep("body", { rows: "many" }).garment, size: "large", unit: "cm" },
    });
    const [front, back] = worked?.pieces ?? [];
    const statuses = (piece: typeof front) => piece?.steps.map(({ step, sizes }) => [step.id, sizes[1]?.status]);
    expect(statuses(front)).toEqual([
      ["cast-on", "worked"],
      ["top", "absent"],
    ]);
    expect(statuses(back)?.map(([, status]) => status)).toEqual(["worked", "worked", "worked"]);
    expect([worked?.stitchesOf("front"), worked?.stitchesOf("back")]).toEqual([null, 40]);
  });
});

describe("changes of a garment", () => {
  const after = withStep("body", {
    rows: 30,
    shape: [{ at: "left", stitches: 1, times: 3, as: "decrease", every: 2 }],
  });

  it("are told step by step, in words", () => {
    expect(patternChanges(vest, after)).toEqual([
      {
        ...{ path: "garment.steps.body", what: "Front, step 2", unit: "none" },
        was: "Work “rows” rows even",
        becomes: "Work 30 rows; decrease 1 stitch at the left edge, every other row, 3 times",
      },
    ]);
    const gone = { ...vest, garment: { ...vest.garment, steps: vest.garment.steps.filter(({ id }) => id !== "top") } };
    expect(patternChanges(vest, gone)).toMatchObject([
      { what: "Front, step 3", was: "Bind off all stitches", becomes: null },
    ]);
    const renamed = vest.garment.pieces.map((piece) => (piece.id === "front" ? { ...piece, made: 2 } : piece));
    expect(patternChanges(vest, { ...vest, garment: { ...vest.garment, pieces: renamed } })).toMatchObject([
      { path: "garment.pieces.front.made", what: "Piece “Front”: made", was: 1, becomes: 2 },
    ]);
  });

  it("are applied to another version, to which a step is added where it was", () => {
    const paths = patternChanges(vest, after).map(({ path }) => path);
    expect(applyChanges(vest, after, paths)).toEqual(after);
    const without = {
      ...vest,
      garment: { ...vest.garment, steps: vest.garment.steps.filter(({ id }) => id !== "body") },
    };
    expect(applyChanges(without, vest, ["garment.steps.body"])).toEqual(vest);
  });
});
