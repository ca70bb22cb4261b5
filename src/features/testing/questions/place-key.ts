import { readInstructions, type InstructionBlock, type Place } from "@/engine/instructions";

/** A place in an address: the block's number and the hash of its words. */
export function placeKey({ block, hash }: Place): string {
  return `${block}-${hash}`;
}

/** The block of a text that a key names. @returns null if the text has a different block there. */
export function blockOfKey(text: string, key: string): InstructionBlock | null {
  return readInstructions(text).find(({ place }) => placeKey(place) === key) ?? null;
}

/** The anchor of a place in the page that shows the text. */
export function blockAnchor(place: Place): string {
  return `place-${placeKey(place)}`;
}
