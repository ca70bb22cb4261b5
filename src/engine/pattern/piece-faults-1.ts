import type { PatternDocument1 } from "./pattern-document-1";
import { ReferenceChecker, type PlacedFault } from "./reference-checker";

type Direction = PatternDocument1["counts"][number]["direction"];

/**
 * Invalid references in the pieces of format 1, found before they become steps, so that their paths are those of the document.
 *
 * @param pattern a document that matches the schema of format 1.
 * @returns the faults, in the document's order; empty where there is none.
 */
export function pieceFaults1({ pieces, counts, fabrics, yarns }: PatternDocument1): readonly PlacedFault[] {
  const check = new ReferenceChecker();
  const ids = (items: readonly { readonly id: string }[]) => new Set(items.map(({ id }) => id));
  const directions = new Map(counts.map(({ id, direction }) => [id, direction]));
  const known = { fabrics: ids(fabrics), yarns: ids(yarns) };
  const counted = (path: readonly (string | number)[], id: string, needed: Direction) => {
    const direction = directions.get(id);
    if (direction === undefined) check.add(path, `there is no count “${id}”.`);
    else if (direction !== needed) check.add(path, `“${id}” counts ${direction}; here ${needed} are needed.`);
  };
  check.unique(["pieces"], pieces);
  pieces.forEach((piece, index) => {
    const path = ["pieces", index];
    check.exists([...path, "fabric"], piece.fabric, known.fabrics, "fabric");
    check.exists([...path, "yarn"], piece.yarn, known.yarns, "yarn");
    piece.sections.forEach(({ from, to, rows, yarn }, place) => {
      const above = [...path, "sections", place];
      counted([...above, "from"], from, "stitches");
      counted([...above, "to"], to, "stitches");
      counted([...above, "rows"], rows, "rows");
      if (yarn !== undefined) check.exists([...above, "yarn"], yarn, known.yarns, "yarn");
    });
  });
  return check.placed;
}
