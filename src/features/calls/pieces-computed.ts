import type { GarmentPiece } from "@/engine/pattern";

const LISTED = new Intl.ListFormat("en", { type: "conjunction" });

/** The pieces that a test is of, as a list of their labels; null where it is of the whole garment. */
export function piecesWords(
  { garment: { pieces } }: { readonly garment: { readonly pieces: readonly Pick<GarmentPiece, "id" | "label">[] } },
  chosen: readonly string[],
): string | null {
  const labels = pieces.filter(({ id }) => chosen.includes(id)).map(({ label }) => label);
  return labels.length === 0 || labels.length === pieces.length ? null : LISTED.format(labels);
}
