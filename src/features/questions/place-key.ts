import { readInstructions, type InstructionBlock, type Place } from "@/engine/instructions";

/** A place in an address: the block's number and what tells its words. */
export function placeKey({ block, hash }: Place): string {
  return `${block}-${hash}`;
}

/** The block of a text that a key names. @returns null where the text has another there. */
export function blockOfKey(text: string, key: string): InstructionBlock | null {
  return readInstructions(text).find(({ place }) => placeKey(place) === key) ?? null;
}

/** A place within the page that shows the text. */
export function blockAnchor(place: Place): string {
  return `place-${placeKey(place)}`;
}
