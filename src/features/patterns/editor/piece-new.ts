import type { DraftPattern } from "@/engine/editing";
import { uniqueSlug } from "@/engine/tables";
import { nextSection, type DraftPiece } from "./piece-edit";

/** One more piece at the end, in the first fabric and the first yarn, with an empty section. */
export function newPiece({ pieces, fabrics, yarns }: DraftPattern): DraftPiece {
  const id = uniqueSlug("piece", new Set(pieces.map((piece) => piece.id)));
  const bare = { id, label: "", fabric: fabrics[0]?.id ?? "", made: 1, yarn: yarns[0]?.id ?? "", sections: [] };
  return { ...bare, sections: [nextSection(bare)] };
}
