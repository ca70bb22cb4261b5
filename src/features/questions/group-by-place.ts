import { findBlock, readInstructions, type InstructionBlock, type Place } from "@/engine/instructions";
import { placeKey } from "./place-key";

/** What is said of one place, which stands in the text that is read, or stood in an earlier one. */
export interface PlaceGroup<Said> {
  readonly key: string;
  /** Null where the text has it no more. */
  readonly block: InstructionBlock | null;
  readonly said: readonly Said[];
}

/**
 * What is said of a text, by place: in the order of the text, at the end what it has no more, in its old order.
 *
 * @param text the instructions that are read, perhaps of a later revision than those that were spoken of.
 */
export function groupByPlace<Said extends { readonly place: Place }>(
  text: string,
  said: readonly Said[],
): PlaceGroup<Said>[] {
  const found = new Map<string, InstructionBlock | null>();
  const groups = new Map<string, { block: InstructionBlock | null; place: Place; said: Said[] }>();
  for (const one of said) {
    const old = `${placeKey(one.place)} ${one.place.words}`;
    const block = found.get(old) ?? (found.has(old) ? null : findBlock(text, one.place));
    found.set(old, block);
    const key = block === null ? `gone-${one.place.hash}` : placeKey(block.place);
    const group = groups.get(key) ?? { block, place: block?.place ?? one.place, said: [] };
    group.said.push(one);
    groups.set(key, group);
  }
  return [...groups]
    .map(([key, { place, ...group }]) => ({ key, at: place.block, ...group }))
    .toSorted((left, right) => Number(left.block === null) - Number(right.block === null) || left.at - right.at)
    .map(({ at: _at, ...group }) => group);
}

/** Where a block stands: the heading above it, and what comes before and after it. */
export interface Surroundings {
  readonly heading: string | null;
  readonly before: string | null;
  readonly after: string | null;
}

/** @param block one of the text's. */
export function surroundingsOf(text: string, block: InstructionBlock): Surroundings {
  const blocks = readInstructions(text);
  const at = block.place.block;
  const heading = blocks.slice(0, at).findLast(({ kind }) => kind === "heading");
  const next = (step: -1 | 1) => {
    const beside = blocks[at + step];
    return beside === undefined || beside.kind === "heading" ? null : beside.text;
  };
  return { heading: heading?.text ?? null, before: next(-1), after: next(1) };
}
