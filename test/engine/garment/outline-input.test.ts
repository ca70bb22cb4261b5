import { describe, expect, it } from "vitest";
import { parseOutlineInput } from "@/engine/garment";
import { garmentPattern } from "../../factories/garment-pattern";

/** A pattern with a seam, an edge, a pick-up and two pieces. */
function pattern() {
  return garmentPattern({
    counts: { width: ["stitches", 40, 50], rows: ["rows", 20, 24] },
    lengths: [{ id: "hem", label: "Hem", cm: 4 }],
    pieces: [
      { id: "front", edges: [{ id: "side", part: "front", side: "left", steps: ["s2", "s2"] }] },
      { id: "band" },
    ],
    steps: [
      { in: "front", do: "start", how: "cast-on", stitches: { count: "width" }, worked: "flat" },
      { in: "front", do: "work", rows: { count: "rows", times: 2 } },
      { in: "front", do: "work", rows: { length: "hem", measured: "working" }, fabric: "rib" },
      { in: "front", do: "end", how: "bind-off", edge: "top" },
      {
        ...{ in: "band", do: "start", how: "pick-up", stitches: { count: "rows", times: 3, over: 2 }, worked: "flat" },
        along: [{ edge: "side", from: 0, to: 1 }],
        rate: [3, 4],
      },
      { in: "band", do: "end", how: "bind-off", edge: "band-top" },
    ],
    seams: [{ a: { edge: "side" }, b: { edge: "side" }, within: 0.1 }],
  });
}

/** The input as JSON, with one place in it set to a value (`undefined` takes it out). */
function withValue(path: readonly (string | number)[], value: unknown): unknown {
  const copy: unknown = JSON.parse(JSON.stringify({ pattern: pattern(), size: "small" }));
  let at: unknown = copy;
  for (const part of path.slice(0, -1)) at = Reflect.get(Object(at), part);
  const last = path.at(-1);
  if (last !== undefined) Reflect.set(Object(at), last, value);
  return JSON.parse(JSON.stringify(copy));
}

describe("what outline takes", () => {
  it("is read whole", () => {
    const parsed = parseOutlineInput(withValue(["size"], "large"));
    expect(parsed.ok ? [] : parsed.faults).toEqual([]);
  });

  it.each<[path: (string | number)[], value: unknown, fault: string]>([
    [["size"], "huge", "size: there is no size “huge”."],
    [
      ["pattern", "format"],
      "sizewright/pattern@3",
      'pattern.format: must be "sizewright/pattern@1" or "sizewright/pattern@2".',
    ],
    [["pattern", "pieces"], [], "pattern.pieces: is not a key of this document."],
    [["pattern", "sampleSize"], "huge", "pattern.sampleSize: there is no size “huge”."],
    [["pattern", "origin"], { length: {} }, "pattern.origin.length: there is no count “length”."],
    [
      ["pattern", "grading", "rows"],
      undefined,
      "pattern.grading.rows: is missing; “rows” needs a number in every size.",
    ],
    [
      ["pattern", "garment", "pieces", 1, "id"],
      "front",
      "pattern.garment.pieces[1].id: “front” appears twice in this list.",
    ],
    [
      ["pattern", "garment", "pieces", 1, "parts"],
      ["front"],
      "pattern.garment.pieces[1].parts[0]: “front” is named twice in this garment.",
    ],
    [["pattern", "garment", "pieces", 0, "yarn"], "silk", "pattern.garment.pieces[0].yarn: there is no yarn “silk”."],
    [
      ["pattern", "garment", "pieces", 0, "edges", 0, "steps", 1],
      "s9",
      "pattern.garment.pieces[0].edges[0].steps[1]: there is no step “s9”.",
    ],
    [["pattern", "garment", "steps", 3, "id"], "s1", "pattern.garment.steps[3].id: “s1” appears twice in this list."],
    [
      ["pattern", "garment", "steps", 1, "do"],
      "knit",
      'pattern.garment.steps[1].do: must be one of "start", "work", "section", "add", "bind-off", "hold", "leave", "short-rows", "mark", "unmark", "divide", "join", "end".',
    ],
    [
      ["pattern", "garment", "steps", 0, "stitches"],
      "many",
      "pattern.garment.steps[0].stitches: should be a whole number or name a count.",
    ],
    [
      ["pattern", "garment", "steps", 0, "stitches"],
      100_001,
      "pattern.garment.steps[0].stitches: must be at most 100000.",
    ],
    [
      ["pattern", "garment", "steps", 0, "stitches"],
      { count: "rows" },
      "pattern.garment.steps[0].stitches.count: “rows” counts rows; here stitches are needed.",
    ],
    [
      ["pattern", "garment", "steps", 1, "rows"],
      { count: "length" },
      "pattern.garment.steps[1].rows.count: there is no count “length”.",
    ],
    [
      ["pattern", "garment", "steps", 1, "rows"],
      { count: "rows", over: 0 },
      "pattern.garment.steps[1].rows.over: must be above 0.",
    ],
    [
      ["pattern", "garment", "steps", 2, "rows"],
      { length: "sleeve" },
      "pattern.garment.steps[2].rows.length: there is no length “sleeve”.",
    ],
    [
      ["pattern", "garment", "steps", 2, "fabric"],
      "lace",
      "pattern.garment.steps[2].fabric: there is no fabric “lace”.",
    ],
    [
      ["pattern", "garment", "steps", 4, "along", 0, "edge"],
      "neck",
      "pattern.garment.steps[4].along[0].edge: there is no edge “neck”.",
    ],
    [["pattern", "garment", "steps", 4, "rate"], [3, 0], "pattern.garment.steps[4].rate[1]: must be above 0."],
    [
      ["pattern", "garment", "seams", 0, "b", "edge"],
      "neck",
      "pattern.garment.seams[0].b.edge: there is no edge “neck”.",
    ],
    [["pattern", "garment", "seams", 0, "within"], 2, "pattern.garment.seams[0].within: must be at most 1."],
  ])("with %j as %j is refused with its path", (path, value, fault) => {
    const parsed = parseOutlineInput(withValue(path, value));
    expect(parsed.ok ? [] : parsed.faults.map(({ path, says }) => `${path}: ${says}`)).toEqual([fault]);
  });

  it("holds at most 10 000 steps", () => {
    const step = { id: "s1", in: { part: "front" }, do: "unmark", marker: "dart" };
    const parsed = parseOutlineInput(withValue(["pattern", "garment", "steps"], Array(10_001).fill(step)));
    expect(parsed.ok ? [] : parsed.faults).toEqual([
      { path: "pattern.garment.steps", says: "must hold at most 10000 steps." },
    ]);
  });

  it("is refused where a measurement lies on what is not there", () => {
    const measurement = { id: "width", letter: "A", label: "Width", how: "Across.", toleranceCm: 1 };
    const terms = [{ times: 1, count: "width" }];
    const on = { from: ["side", 0.5], to: ["neck", 0.5] };
    const parsed = parseOutlineInput(withValue(["pattern", "measurements"], [{ ...measurement, terms, on }]));
    expect(parsed.ok ? [] : parsed.faults).toEqual([
      { path: "pattern.measurements[0].on.to[0]", says: "there is no edge “neck”." },
    ]);
  });
});
