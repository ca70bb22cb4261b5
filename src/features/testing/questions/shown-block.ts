import type { BlockKind } from "@/engine/instructions";

/** A piece of a block: plain text, numbers of all sizes, or numbers that are not one per size. */
export type ShownPiece =
  | string
  | { readonly unsure: string }
  | ShownChange
  | {
      /** In their order; the reader's own number is in an array. */
      readonly sizes: readonly (string | readonly [own: string] | ShownChange)[];
      /** The reader's own is a dash, which means none. */
      readonly none?: true;
    };

/** A number that a correction changed. */
export interface ShownChange {
  readonly was: string;
  readonly becomes: string;
  /** It is the reader's own. */
  readonly own?: true;
}

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
    if ("unsure" in one) return one.unsure;
    if ("was" in one) return one.becomes;
    return one.sizes.map((part) => (typeof part === "object" && "was" in part ? part.becomes : part)).join("");
  });
  return words.join("").slice(0, 60);
}
