import type { DraftPattern } from "@/engine/editing";
import { uniqueSlug } from "@/engine/tables";

export type DraftPiece = DraftPattern["pieces"][number];
export type DraftSection = DraftPiece["sections"][number];

export interface PieceEdit {
  readonly piece: DraftPiece;
  readonly i: number;
  /** @param field where it is typed, in the piece; null for a separate edit. */
  readonly onPiece: (next: DraftPiece, field: string | null) => void;
}

const NEW_SECTION: DraftSection = { from: "", to: "", rows: "" };

/** A section that continues from the last one. */
export function nextSection({ sections }: DraftPiece): DraftSection {
  const stitches = sections.at(-1)?.to ?? "";
  return { ...NEW_SECTION, from: stitches, to: stitches };
}

/** One more piece at the end, in the first fabric and the first yarn, with an empty section. */
export function newPiece({ pieces, fabrics, yarns }: DraftPattern): DraftPiece {
  const id = uniqueSlug("piece", new Set(pieces.map((piece) => piece.id)));
  const bare = { id, label: "", fabric: fabrics[0]?.id ?? "", made: 1, yarn: yarns[0]?.id ?? "", sections: [] };
  return { ...bare, sections: [nextSection(bare)] };
}
