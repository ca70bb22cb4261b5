import { describe, expect, it } from "vitest";
import { garmentPattern, type Step } from "../../factories/garment-pattern";
import { outlined, stitchRuns } from "./outlined";

const castOn = (part: string, stitches = 40): Step => ({
  ...{ id: `${part}-start`, in: part, do: "start", how: "cast-on", stitches, worked: "flat" },
});
const end = (part: string): Step => ({ id: `${part}-end`, in: part, do: "end", how: "bind-off", edge: `${part}-top` });

/** One piece, its steps between cast-on and bind-off. */
function front(...steps: readonly Step[]) {
  return outlined(garmentPattern({ pieces: [{ id: "front" }], steps: [castOn("front"), ...steps, end("front")] }));
}

describe("a step that cannot be worked", () => {
  it("that binds off more than there are binds off what there is, and the steps after it add no fault", () => {
    const { messages, piece } = front(
      { in: "front", do: "work", rows: 4 },
      { id: "armhole", in: "front", do: "bind-off", at: "both", each: 30 },
      { in: "front", do: "work", rows: 4 },
    );
    expect(messages).toEqual([
      "armhole: There are 10 stitches left in “front”, and 30 are to be bound off. Take away at most 10, or begin with more.",
    ]);
    expect(stitchRuns(piece("front").steps)).toEqual(["40 × 4", "10 × 1"]);
  });

  it("whose rows run out before its shaping does shapes the rest in its last row", () => {
    const shape = [{ at: "both", stitches: 1, times: 5, as: "decrease", every: 4 }] as const;
    const { messages, piece } = front(
      { id: "sleeve-cap", in: "front", do: "work", rows: 10, shape },
      { in: "front", do: "work", rows: 1 },
    );
    // The 5th time falls on row 20.
    expect(messages).toEqual([
      "sleeve-cap: Shaping 5 times takes 20 rows, and there are 10. Work more rows, or shape more often or more stitches at a time.",
    ]);
    expect(stitchRuns(piece("front").steps)).toEqual(["40 × 3", "38 × 4", "36 × 2", "30 × 2"]);
  });

  it("that binds off at an edge where no more row starts says so", () => {
    const shape = [{ at: "left", stitches: 3, times: 1, as: "bind-off", every: 1, start: 1 }] as const;
    expect(front({ id: "neck", in: "front", do: "work", rows: 1, shape }).messages).toEqual([
      "neck: The rows end before the next one that starts at the left edge, where stitches are to be bound off. Work 1 row more, or begin the shaping 1 row earlier.",
    ]);
  });

  it.each<[what: string, step: Step, message: RegExp]>([
    [
      "joins parts that do not exist",
      { id: "x", in: "front", do: "join", parts: [{ part: "front" }, { part: "back" }], as: "front", worked: "flat" },
      /^x: There are no stitches “back” yet\. Start them/,
    ],
    [
      "divides into another number of stitches",
      { id: "x", in: "front", do: "divide", into: ["front", "rest"].map((part) => ({ part, stitches: 15 })) },
      /^x: “front” has 40 stitches, and 15 \+ 15 = 30 are divided\. Make them the same\./,
    ],
    [
      "binds off in the middle",
      { id: "x", in: "front", do: "bind-off", at: "centre", each: 4 },
      /^x: What is bound off at the centre leaves two sides\. Divide “front” into three parts/,
    ],
    [
      "shapes at a marker that is not there",
      { id: "x", in: "front", do: "add", at: { marker: "dart" }, each: 4 },
      /^x: There is no marker “dart” in “front”\./,
    ],
    [
      "places a marker beyond the last stitch",
      { id: "x", in: "front", do: "mark", marker: "dart", at: 41 },
      /^x: The marker “dart” comes after 41 stitches, and “front” has 40\./,
    ],
    [
      "takes away a marker that is not there",
      { id: "x", in: "front", do: "unmark", marker: "dart" },
      /^x: There is no marker/,
    ],
    [
      "turns beyond the other edge",
      { id: "x", in: "front", do: "short-rows", at: "both", each: 5, turns: 5 },
      /^x: 50 stitches would be passed in short rows, and “front” has 40\./,
    ],
    ["starts a part again", { ...castOn("front"), id: "x" }, /^x: “front” is started twice\./],
    ["starts a part of no piece", { ...castOn("hood"), id: "x" }, /^x: No piece has a part “hood”\./],
    [
      "starts a copy that is not made",
      { ...castOn("front"), id: "x", in: { part: "front", copy: 2 } },
      /^x: “front” is made once, and copy 2 is to be started\./,
    ],
    [
      "grafts without saying to what",
      { id: "x", in: "front", do: "end", how: "graft", edge: "grafted" },
      /^x: “front” is worked together with other stitches, and they are not named\./,
    ],
    [
      "works stitches that are gone",
      { id: "x", in: "gone", do: "work", rows: 2 },
      /^x: There are no stitches “gone” yet\./,
    ],
  ])("that %s is a fault", (_what, step, message) => {
    const { messages, piece } = front({ in: "front", do: "work", rows: 4 }, step);
    expect(messages[0]).toMatch(message);
    expect(stitchRuns(piece("front").steps)[0]).toMatch(/^40 × \d/);
  });

  it("that needs edges in the round asks for a marker", () => {
    const { messages } = outlined(
      garmentPattern({
        pieces: [{ id: "hat" }],
        steps: [
          { in: "hat", do: "start", how: "chain", stitches: 80, worked: "spiral" },
          { in: "hat", do: "work", rows: 10 },
          { id: "ear", in: "hat", do: "bind-off", at: "left", each: 10 },
          { in: "hat", do: "end", how: "fasten-off", edge: "rim" },
        ],
      }),
    );
    expect(messages).toEqual([
      "ear: “hat” is worked in the round and has no left or right edge for 10 stitches. Name a marker, or divide it first.",
    ]);
  });

  it("of a part that has ended names the step that ended it", () => {
    const { messages } = outlined(
      garmentPattern({
        pieces: [{ id: "front" }],
        steps: [castOn("front"), end("front"), { ...end("front"), id: "again" }],
      }),
    );
    expect(messages).toEqual([
      "again: “front” has no stitches left after step “front-end”. Name a part that is still on the needle.",
    ]);
  });
});

describe("numbers that do not meet", () => {
  it("are a fault where a share of a count is not whole, in the sizes where it is not", () => {
    const pattern = garmentPattern({
      counts: { width: ["stitches", 81, 90] },
      pieces: [{ id: "front" }],
      steps: [{ ...castOn("front"), stitches: { count: "width", over: 2 } } as Step, end("front")],
    });
    expect(outlined(pattern).messages).toEqual([
      "front-start: “width” ÷ 2 is 40.5 here, and must be whole. Change “width”, which is 81.",
    ]);
    expect(outlined(pattern, "large").messages).toEqual([]);
  });

  it("are a fault where stitches are grafted to fewer", () => {
    const pattern = garmentPattern({
      pieces: [{ id: "front" }, { id: "back" }],
      steps: [
        castOn("front"),
        castOn("back", 38),
        { id: "graft", in: "front", do: "end", how: "graft", edge: "top", with: { part: "back" } },
      ],
    });
    expect(outlined(pattern).messages).toEqual([
      "graft: “front” has 40 stitches and “back” 38; stitch by stitch they must have as many. Change one of them.",
    ]);
  });

  it("are a fault where seams differ by more than is eased in", () => {
    const pieces = ["front", "back"].map((id) => ({
      id,
      edges: [{ id: `${id}-side`, part: id, side: "left" as const }],
    }));
    const pattern = (within?: number) =>
      garmentPattern({
        pieces,
        steps: ["front", "back"].flatMap((id, index): Step[] => [
          castOn(id),
          { in: id, do: "work", rows: 100 - 4 * index },
          end(id),
        ]),
        seams: [
          { a: { edge: "front-side" }, b: { edge: "back-side" }, ...(within === undefined ? {} : { within }) },
          { a: { edge: "front-side", to: 0.5 }, b: { edge: "back-side", to: 0.5 }, within: 0.05 },
        ],
      });
    // 100 and 96 rows, 40 and 38.4 cm: 1.6 of 40 is 4 %.
    expect(outlined(pattern()).messages).toEqual([
      "seam 0: “front-side” is 40.0 cm long and “back-side” 38.4 cm; that is 4 % apart, and 2 % can be eased in. Make them more alike, or allow more.",
    ]);
    expect(outlined(pattern(0.04)).messages).toEqual([]);
  });

  it("are a fault where a piece ends with live stitches, and none where they are held", () => {
    const steps = [castOn("front"), { id: "even", in: "front", do: "work", rows: 2 } as Step];
    const live = outlined(garmentPattern({ pieces: [{ id: "front" }], steps }));
    expect(live.messages).toEqual([
      "even: 40 stitches of “front” are still live at the end. Bind them off, hold them, or join or graft them to others.",
    ]);
    const held: Step = { in: "front", do: "end", how: "hold", edge: "top" };
    expect(outlined(garmentPattern({ pieces: [{ id: "front" }], steps: [...steps, held] })).messages).toEqual([]);
  });

  it("are a fault where a part of a piece is never joined to it", () => {
    const parts = ["front", "hood"];
    const steps = parts.flatMap((id): Step[] => [
      castOn(id),
      { in: id, do: "work", rows: id === "front" ? 9 : 2 },
      end(id),
    ]);
    expect(outlined(garmentPattern({ pieces: [{ id: "front", parts }], steps })).messages).toEqual([
      "hood-start: “hood” is worked in “front” and never joined to the rest of it. Join it, or make it a piece of its own.",
    ]);
  });
});
