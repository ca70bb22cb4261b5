import { readInstructions } from "@/engine/instructions";
import type { TextPart } from "./components/text-parts-nav";
import { blockAnchor } from "./place-key";

/** The headings of a text, each with its anchor in the page. */
export function textParts(text: string): TextPart[] {
  return readInstructions(text)
    .filter(({ kind }) => kind === "heading")
    .map(({ place, text: label }) => ({ anchor: blockAnchor(place), label }));
}
