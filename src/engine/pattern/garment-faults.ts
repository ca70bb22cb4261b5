import type { PathPart } from "./faults";
import type { Garment, GarmentStep } from "./garment-document";
import { edgeMadeBy } from "./garment-parts";
import { numbersOfStep, type PlacedNumber } from "./step-numbers";
import type { Count, PatternDocument } from "./pattern-document";
import type { ReferenceChecker } from "./reference-checker";

interface Known {
  readonly counts: ReadonlyMap<string, Count>;
  readonly lengths: ReadonlySet<string>;
  readonly fabrics: ReadonlySet<string>;
  readonly yarns: ReadonlySet<string>;
  readonly sizes: ReadonlySet<string>;
  readonly steps: ReadonlySet<string>;
  readonly edges: ReadonlySet<string>;
}

/**
 * Finds invalid references in the garment and of what names it: unknown or duplicate ids of pieces, parts, edges and steps, and of
 * what they name outside the garment. Whether a part is there when a step needs it is found out by working the garment.
 *
 * @param pattern a document that matches the schema.
 * @param above path of the pattern inside a larger document.
 */
export function garmentFaults(check: ReferenceChecker, pattern: PatternDocument, above: readonly PathPart[]): void {
  const known = knownIds(check, pattern, above);
  const { pieces, steps, seams } = pattern.garment;
  const path = [...above, "garment"];
  pieces.forEach(({ fabric, yarn, edges }, index) => {
    check.exists([...path, "pieces", index, "fabric"], fabric, known.fabrics, "fabric");
    check.exists([...path, "pieces", index, "yarn"], yarn, known.yarns, "yarn");
    edges.forEach(({ steps = [] }, edge) =>
      steps.forEach((id, end) =>
        check.exists([...path, "pieces", index, "edges", edge, "steps", end], id, known.steps, "step"),
      ),
    );
  });
  steps.forEach((step, index) => checkStep(check, step, known, [...path, "steps", index]));
  seams.forEach((seam, index) => {
    for (const side of ["a", "b"] as const)
      check.exists([...path, "seams", index, side, "edge"], seam[side].edge, known.edges, "edge");
  });
  checkPlaces(check, pattern, known, above);
}

function knownIds(check: ReferenceChecker, pattern: PatternDocument, above: readonly PathPart[]): Known {
  const { garment } = pattern;
  const path = [...above, "garment"];
  check.unique([...path, "pieces"], garment.pieces);
  uniqueInAll(check, garment, { list: "parts", path });
  uniqueInAll(check, garment, { list: "edges", path });
  return {
    counts: new Map(pattern.counts.map((count) => [count.id, count])),
    lengths: new Set(pattern.lengths?.map(({ id }) => id)),
    fabrics: new Set(pattern.fabrics.map(({ id }) => id)),
    yarns: new Set(pattern.yarns.map(({ id }) => id)),
    sizes: new Set(pattern.sizes.map(({ id }) => id)),
    steps: check.unique([...path, "steps"], garment.steps),
    edges: new Set([
      ...garment.pieces.flatMap(({ edges }) => edges.map(({ id }) => id)),
      ...garment.steps.flatMap((step) => edgeMadeBy(step) ?? []),
    ]),
  };
}

/** Parts and edges have one name in the whole garment, because steps and seams cross pieces. */
function uniqueInAll(
  check: ReferenceChecker,
  { pieces }: Garment,
  { list, path }: { list: "parts" | "edges"; path: readonly PathPart[] },
): void {
  const seen = new Set<string>();
  pieces.forEach((piece, index) =>
    piece[list].forEach((named, place) => {
      const id = typeof named === "string" ? named : named.id;
      if (seen.has(id)) check.add([...path, "pieces", index, list, place], `“${id}” is named twice in this garment.`);
      seen.add(id);
    }),
  );
}

function checkStep(check: ReferenceChecker, step: GarmentStep, known: Known, path: readonly PathPart[]): void {
  for (const placed of numbersOfStep(step, path)) checkNumber(check, placed, known);
  if (step.do === "start")
    step.along?.forEach(({ edge }, index) =>
      check.exists([...path, "along", index, "edge"], edge, known.edges, "edge"),
    );
  if (step.do === "work") {
    if (step.fabric !== undefined) check.exists([...path, "fabric"], step.fabric, known.fabrics, "fabric");
    if (typeof step.rows === "object" && "length" in step.rows)
      check.exists([...path, "rows", "length"], step.rows.length, known.lengths, "length");
  }
  if ((step.do === "work" || step.do === "section") && step.yarn !== undefined)
    check.exists([...path, "yarn"], step.yarn, known.yarns, "yarn");
}

/** Of times or a share of a count, any will do: stitches are picked up by a share of rows. */
function checkNumber(check: ReferenceChecker, { path, number, direction }: PlacedNumber, { counts }: Known): void {
  if (typeof number !== "object") return;
  const count = counts.get(number.count);
  const isPlain = number.times === undefined && number.over === undefined;
  if (count === undefined) check.add([...path, "count"], `there is no count “${number.count}”.`);
  else if (direction !== undefined && isPlain && count.direction !== direction)
    check.add([...path, "count"], `“${count.id}” counts ${count.direction}; here ${direction} are needed.`);
}

function checkPlaces(
  check: ReferenceChecker,
  { measurements, garment, sampleSize, origin = {} }: PatternDocument,
  known: Known,
  above: readonly PathPart[],
): void {
  const pieces = new Set(garment.pieces.map(({ id }) => id));
  measurements.forEach(({ on }, index) => {
    const path = [...above, "measurements", index, "on"];
    if (on === undefined) return;
    if ("piece" in on) return check.exists([...path, "piece"], on.piece, pieces, "piece");
    for (const end of ["from", "to"] as const) check.exists([...path, end, 0], on[end][0], known.edges, "edge");
  });
  if (sampleSize !== undefined) check.exists([...above, "sampleSize"], sampleSize, known.sizes, "size");
  for (const [count, sizes] of Object.entries(origin)) {
    if (!known.counts.has(count)) check.add([...above, "origin", count], `there is no count “${count}”.`);
    check.keysExist([...above, "origin", count], sizes, known.sizes, "size");
  }
}
