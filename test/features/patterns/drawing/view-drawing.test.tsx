import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { ViewDrawing } from "../../../../src/features/patterns/drawing/view-drawing";
import { GARMENTS, SIZES } from "../../../garments";
import { viewsOf } from "../../../engine/garment-view/followed";

function drawn(id: string, lit?: string): string {
  const pattern = GARMENTS[id];
  if (pattern === undefined) throw new Error(`no garment ${id}`);
  const views = SIZES.map((size) => viewsOf(pattern, size).garment).filter((view) => view !== null);
  const [small, ...others] = views;
  if (small === undefined) throw new Error("no garment view");
  return renderToStaticMarkup(
    <ViewDrawing
      view={small}
      others={others}
      title="The garment in S"
      {...(lit === undefined ? {} : { litMeasurement: lit })}
    />,
  );
}

describe("the drawing of a garment", () => {
  it("is an image with a title, and a description with lengths in both units", () => {
    const markup = drawn("round-yoke");
    expect(markup).toContain('<svg role="img"');
    expect(markup).toContain(">The garment in S</title>");
    // Body 176 stitches around, 44 cm flat, 17 3/8 in; 100 rounds, 40 cm, 15 3/4 in. Chest 88 cm, 34 5/8 in.
    expect(markup).toContain(
      "Body: 44.0 cm (17 3/8 in) wide at the lower edge, 40.0 cm (15 3/4 in) high. Worked in the round and drawn flat: half of it is seen.",
    );
    expect(markup).toContain("A: Chest, around, 88.0 cm (34 5/8 in).");
  });

  it("draws the other sizes thin", () => {
    expect(drawn("set-in").match(/class="view-other-size"/g)).toHaveLength(2);
  });

  it("lights the tape of the measurement that is asked for, and no other", () => {
    expect(drawn("vest")).not.toContain("view-lit");
    const lit = drawn("vest", "m2");
    expect(lit.match(/class="view-tape view-lit"/g)).toHaveLength(1);
    expect(lit).toMatch(/class="view-mark view-lit">.*?>B<\/text>/);
  });
});
