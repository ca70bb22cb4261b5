import { describe, expect, it } from "vitest";
import { garmentView, type DrawingView } from "@/engine/garment-view";
import { patternFaults, patternOfPieces, type PatternDocument } from "@/engine/pattern";
import { fitAreas, reportSteps } from "@/engine/reporting";
import { saltmarshPattern } from "../../../prisma/demo/saltmarsh-pattern";
import { garmentPattern } from "../../factories/garment-pattern";
import { piecedPattern } from "../../factories/pieced-pattern";

const pattern = piecedPattern();
const ids = (items: readonly { readonly id: string }[] = []) => items.map(({ id }) => id);

describe("patternOfPieces", () => {
  it("is the pattern itself for none of its pieces, for all of them and for unknown ones", () => {
    expect(patternFaults(pattern)).toEqual([]);
    for (const pieces of [[], ["body", "sleeve"], ["collar"]]) expect(patternOfPieces(pattern, pieces)).toBe(pattern);
  });

  it("has the measurements that are made of a piece, and none that need another", () => {
    expect(ids(patternOfPieces(pattern, ["sleeve"]).measurements)).toEqual(["upper-arm", "sleeve-length"]);
    expect(ids(patternOfPieces(pattern, ["body"]).measurements)).toEqual(["bust", "length"]);
  });

  it("has what these are made of: counts of no piece too, fabrics, lengths and the body that they aim at", () => {
    const sleeve = patternOfPieces(pattern, ["sleeve"]);
    expect(ids(sleeve.counts)).toEqual(["sleeve-width", "sleeve-rows", "cuff"]);
    expect(Object.keys(sleeve.grading ?? {})).toEqual(["sleeve-width", "sleeve-rows", "cuff"]);
    expect([ids(sleeve.fabrics), ids(sleeve.lengths), ids(sleeve.yarns)]).toEqual([["rib"], ["hem"], []]);
    expect(fitAreas(sleeve)).toEqual(["arm"]);
    expect([ids(patternOfPieces(pattern, ["body"]).lengths), fitAreas(patternOfPieces(pattern, ["body"]))]).toEqual([
      [],
      ["bust"],
    ]);
  });

  it("is drawn as these pieces are drawn among all of them, with their own measurements", () => {
    const whole = saltmarshPattern;
    for (const pieces of [["sleeve"], ["body"], ["body", "back"]]) {
      const tested = patternOfPieces(whole, pieces);
      const measured = ids(tested.measurements);
      for (const { id } of whole.sizes) {
        const among = drawnIn(whole, id).filter(({ piece }) => piece !== null && pieces.includes(piece));
        expect(among).toHaveLength(pieces.length);
        expect(drawnIn(tested, id).map(drawnWith(measured))).toEqual(among.map(drawnWith(measured)));
      }
    }
  });

  it("has with a piece those that its stitches come from, and without others an edge that is bound off alone", () => {
    const yoked = garmentPattern({
      counts: { yoke: ["stitches", 60, 70], sleeve: ["stitches", 20, 22], back: ["stitches", 40, 48] },
      pieces: [{ id: "yoke", parts: ["yoke", "body"] }, { id: "sleeve" }, { id: "pocket" }],
      steps: [
        { in: "yoke", do: "start", how: "cast-on", stitches: { count: "yoke" }, worked: "flat" },
        {
          ...{ in: "yoke", do: "divide" },
          into: [
            { part: "body", stitches: { count: "back" } },
            { part: "sleeve", stitches: { count: "sleeve" } },
          ],
        },
        { in: "pocket", do: "start", how: "cast-on", stitches: 10, worked: "flat" },
        { in: "pocket", do: "end", how: "graft", edge: "pocket-top", with: { part: "body" } },
        { in: "sleeve", do: "end", how: "bind-off", edge: "cuff" },
      ],
    });
    const sleeve = patternOfPieces(yoked, ["sleeve"]);
    expect(ids(sleeve.garment.pieces)).toEqual(["yoke", "sleeve"]);
    expect(patternFaults(sleeve).map(({ path }) => path)).not.toContain("garment");
    const pocket = patternOfPieces(yoked, ["pocket"]);
    expect(ids(pocket.garment.pieces)).toEqual(["pocket"]);
    expect(pocket.garment.steps.at(-1)).toEqual({
      ...{ id: "s4", in: { part: "pocket" }, do: "end", how: "bind-off", edge: "pocket-top" },
    });
    expect(ids(pocket.counts)).toEqual([]);
  });

  it("asks a tester for that and no more", () => {
    const context = { size: "small", unit: "cm", formatLength: (cm: number) => `${cm} cm` } as const;
    const steps = reportSteps({}, { ...context, pattern: patternOfPieces(pattern, ["sleeve"]) });
    expect(steps.map(({ step, of }) => [step, of])).toEqual([
      ["swatch", 1],
      ["make", 4],
      ["measure", 2],
      ["fit", 1],
    ]);
  });
});

function drawnIn(pattern: PatternDocument, size: string): readonly DrawingView[] {
  return garmentView(pattern, pattern.grading ?? {}, size).pieces;
}

/** Without the places of letters, which make room for each other. */
function drawnWith(measured: readonly string[]) {
  return ({ piece, shapes, tapes }: DrawingView) => ({
    ...{ piece, shapes },
    tapes: tapes
      .filter(({ measurement }) => measured.includes(measurement))
      .map(({ letterAt: _letterAt, ...tape }) => tape),
  });
}
