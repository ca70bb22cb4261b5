import type { BlockKind } from "@/engine/instructions";

/** A piece of a block: plain text, numbers of all sizes, or numbers that are not one per size. */
export type ShownPiece =
  | string
  | { readonly unsure: string }
  | {
      /** In their order; the reader's own number is in an array. */
      readonly sizes: readonly (string | readonly [own: string])[];
      /** The reader's own is a dash, which means none. */
      readonly none?: true;
    };

/** A block of the instructions, with only what the browser needs. */
export interface ShownBlock {
  /** Its place in an address. */
  readonly key: string;
  readonly kind: BlockKind;
  /** The marker before a step. */
  readonly mark: string;
  readonly pieces: readonly ShownPiece[];
}

/** The beginning of a block's words, for screen readers. */
export function beginningOf({ pieces }: Pick<ShownBlock, "pieces">): string {
  const words = pieces.map((one) => {
    if (typeof one === "string") return one;
    return "unsure" in one ? one.unsure : one.sizes.flat().join("");
  });
  return words.join("").slice(0, 60);
}
