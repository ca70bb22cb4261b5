import type { Measurement, PatternDocument, StepNumber } from "../pattern";
import { finishedMeasurements, indexPattern, measureTerm, patternWorking, type PatternIndex } from "../prediction";
import { outlinedShapes } from "./outlined-shape";
import { patternShaping, type Section, type ShapedPiece, type SizedSection } from "../shaping";
import type { BareShape, MeasurementLine, PieceShape } from "./piece-shape";
import { placeSections, type MeasuredSection } from "./placed-section";
import type { Point } from "./point";
import { unknownShape } from "./unknown-shape";
import { workShape } from "./work-shape";
import { wornShape } from "./worn-shape";

/**
 * Draws every piece of a pattern in one size, to scale, as finished fabric (stated gauge, settled).
 *
 * A tube is drawn cut open, as wide as its circumference. Measurement lines are placed by `on`, as shares of the drawing's
 * width from the left and of its height from below. A piece whose shape is unknown gets a placeholder.
 *
 * @param pattern a parsed pattern; counts may still be without numbers.
 * @param size id of one of its sizes.
 * @returns one shape per piece, in the pattern's order; all have their middle and their lowest point at 0, so that sizes
 * drawn over each other are nested.
 */
export function drawPieces(pattern: PatternDocument, size: string): PieceShape[] {
  const index = indexPattern(pattern);
  const outlined = outlinedShapes(pattern, size);
  const finished = finishedMeasurements(pattern).map(({ measurement, sizes }) => ({
    measurement,
    cm: sizes.find((entry) => entry.size === size)?.designCm ?? null,
  }));
  return patternShaping(pattern).map((shaped) => {
    const bare = outlined.get(shaped.piece.id) ?? bareShape(index, shaped, size);
    return { ...bare, lines: finished.flatMap(({ measurement, cm }) => measurementLine(measurement, cm, bare)) };
  });
}

/** A piece of sections, as format 1 had them. */
function bareShape(index: PatternIndex, { piece, sections }: ShapedPiece, size: string): BareShape {
  const named = { piece: piece.id, size };
  if (sections.length === 0) return unknownShape(named, "Nothing of it is worked yet, so its shape is unknown.");
  const sized = sections.flatMap(({ section, sizes }) =>
    sizes.filter((entry) => entry.size === size).map((entry) => ({ section, entry })),
  );
  const missing = sized.find(({ entry }) => entry.counts === null);
  if (missing) return unknownShape(named, missing.entry.message);
  const measured = sized.flatMap(({ section, entry }) => measuredSection(index, section, entry));
  const worn = wornShape(workShape(placeSections(measured)), piece);
  if (worn.widthCm === 0 || worn.heightCm === 0) {
    return unknownShape(named, "It has 0 stitches or rows, so there is nothing to draw.");
  }
  return { ...named, ...worn, isToScale: true, sketchReasons: worn.marks.map(({ message }) => message) };
}

function measuredSection(index: PatternIndex, section: Section, entry: SizedSection): MeasuredSection[] {
  const { counts, shaping, message, size } = entry;
  if (counts === null) return [];
  const working = patternWorking(index, size);
  const lengthCm = (number: StepNumber) => {
    if (typeof number === "number") return 0;
    const { times = 1, over = 1, count } = number;
    return measureTerm(index, { times, count }, working).cm / over;
  };
  return [
    {
      shaping,
      fault: shaping.status === "planned" ? null : message,
      edges: section.shaping?.edges ?? "both",
      stitches: counts,
      rows: counts.rows,
      fromCm: lengthCm(section.from),
      toCm: lengthCm(section.to),
      heightCm: lengthCm(section.rows),
    },
  ];
}

function measurementLine(measurement: Measurement, cm: number | null, shape: BareShape): MeasurementLine[] {
  const { id, letter, label, on } = measurement;
  if (on === undefined || !("piece" in on) || on.piece !== shape.piece) return [];
  const pointAt = ([across, up]: readonly [number, number]): Point => ({
    xCm: (across - 0.5) * shape.widthCm,
    yCm: up * shape.heightCm,
  });
  return [{ measurement: id, letter, label, from: pointAt(on.from), to: pointAt(on.to), cm }];
}
