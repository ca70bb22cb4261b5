/** Parts of the editor, in the order of the work, by the word in the address. */
export const EDITOR_PARTS = [
  { key: "grading", label: "Grading", lists: ["grading"] },
  { key: "sizes", label: "Sizes", lists: ["sizes", "bodyMeasurements", "sizeBy"] },
  { key: "fabrics", label: "Fabrics", lists: ["fabrics"] },
  { key: "counts", label: "Counts and sums", lists: ["counts", "ties"] },
  { key: "lengths", label: "Lengths and edgings", lists: ["lengths", "allowances"] },
  { key: "measurements", label: "Measurements", lists: ["measurements"] },
  { key: "pieces", label: "Pieces", lists: ["garment"] },
  { key: "text", label: "Text and yarn", lists: ["name", "craft", "yarns", "instructions"] },
] as const;

export type EditorPart = (typeof EDITOR_PARTS)[number]["key"];

/** The requested part, by default the grading. */
export function partOf(word: string | null | undefined): EditorPart {
  return EDITOR_PARTS.find(({ key }) => key === word)?.key ?? "grading";
}

/** The part in which a path of the draft is edited. */
export function partOfPath(path: string): EditorPart {
  const list = /^[^.[]*/.exec(path)?.[0] ?? "";
  return EDITOR_PARTS.find(({ lists }) => lists.some((each) => each === list))?.key ?? "grading";
}
