import type { DrawingView, Line, Place } from "@/engine/garment-view";
import { escapeXml } from "@/server/escape-xml";
import { heightCm, linePath, widthCm } from "../line-path";
import { shortLetter } from "../drawing-copy";
import { element } from "./svg-element";
import type { Block } from "./text-block";

const LETTER_MM = 3;
const STROKE_MM = { edge: 0.4, other: 0.15, join: 0.2, tape: 0.15 };

/**
 * A drawing to print, black on white, the other sizes thin about it.
 *
 * @param scale 5 for 1:5.
 */
export function viewBlock(
  view: DrawingView,
  { others, scale }: { readonly others: readonly DrawingView[]; readonly scale: number },
): Block {
  const mmPerCm = 10 / scale;
  const { box } = view;
  const boxes = [view, ...others].map((one) => one.box);
  const [left, top] = [Math.min(...boxes.map(({ leftCm }) => leftCm)), Math.max(...boxes.map(({ topCm }) => topCm))];
  const around = {
    ...{ leftCm: left, topCm: top, rightCm: Math.max(...boxes.map(({ rightCm }) => rightCm)) },
    bottomCm: Math.min(box.bottomCm, ...boxes.map(({ bottomCm }) => bottomCm)),
  };
  return {
    widthMm: widthCm(around) * mmPerCm,
    heightMm: heightCm(around) * mmPerCm,
    at: (x, y) => {
      const place = ([xCm, yCm]: Place): Place => [x + (xCm - left) * mmPerCm, -(y + (top - yCm) * mmPerCm)];
      const path = (line: Line, look: Record<string, string | number>, isClosed = false) =>
        element("path", { d: linePath(moved(line, place), isClosed), fill: "none", stroke: "#000", ...look });
      return [
        ...view.shapes.flatMap(({ fabric, edges, isBehind }) => [
          path(fabric, { fill: isBehind ? "#e6e6e6" : "#fff", stroke: "none" }, true),
          ...edges.map((edge) => path(edge, { "stroke-width": STROKE_MM.edge, "stroke-linejoin": "round" })),
        ]),
        ...view.joins.map((join) => path(join, { "stroke-width": STROKE_MM.join, "stroke-dasharray": "1.2 1.2" })),
        ...others.flatMap(({ shapes }) =>
          shapes
            .filter(({ isBehind }) => !isBehind)
            .flatMap(({ edges }) =>
              edges.map((edge) => path(edge, { stroke: "#888", "stroke-width": STROKE_MM.other })),
            ),
        ),
        ...view.tapes.map(({ from, to }) =>
          path({ from, stretches: [{ to, by: null, isCorner: true }] }, { "stroke-width": STROKE_MM.tape }),
        ),
        ...view.tapes.map(({ letter, letterAt }) => letterMarkup(place(letterAt), letter)),
      ].join("\n");
    },
  };
}

function letterMarkup([x, y]: Place, letter: string): string {
  const look = { stroke: "#fff", "stroke-width": 1.6, "stroke-linejoin": "round", "paint-order": "stroke" };
  const at = { x, y: -y + LETTER_MM / 3, "text-anchor": "middle", "font-size": LETTER_MM, "font-weight": "bold" };
  return element("text", { ...at, ...look }, escapeXml(shortLetter(letter)));
}

/** Kept upward, as `linePath` turns it. */
function moved({ from, stretches }: Line, place: (at: Place) => Place): Line {
  return {
    from: place(from),
    stretches: stretches.map(({ to, by, isCorner }) => ({
      to: place(to),
      by: by && [place(by[0]), place(by[1])],
      isCorner,
    })),
  };
}
