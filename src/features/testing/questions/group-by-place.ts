import { findBlock, readInstructions, type InstructionBlock, type Place } from "@/engine/instructions";
import { placeKey } from "./place-key";

/** The notes about one place, which is in the current text or was in an earlier one. */
export interface PlaceGroup<Note> {
  readonly key: string;
  /** Null if the text no longer contains it. */
  readonly block: InstructionBlock | null;
  readonly notes: readonly Note[];
}

/**
 * Notes by place, in the order of the text; places that are gone come last, in their old order.
 *
 * @param text the current instructions, perhaps of a later revision than the notes.
 */
export function groupByPlace<Note extends { readonly place: Place }>(
  text: string,
  notes: readonly Note[],
): PlaceGroup<Note>[] {
  const found = new Map<string, InstructionBlock | null>();
  const groups = new Map<string, { block: InstructionBlock | null; place: Place; notes: Note[] }>();
  for (const one of notes) {
    const old = `${placeKey(one.place)} ${one.place.words}`;
    const block = found.get(old) ?? (found.has(old) ? null : findBlock(text, one.place));
    found.set(old, block);
    const key = block === null ? `gone-${one.place.hash}` : placeKey(block.place);
    const group = groups.get(key) ?? { block, place: block?.place ?? one.place, notes: [] };
    group.notes.push(one);
    groups.set(key, group);
  }
  return [...groups]
    .map(([key, { place, ...group }]) => ({ key, index: place.block, ...group }))
    .toSorted((left, right) => Number(left.block === null) - Number(right.block === null) || left.index - right.index)
    .map(({ index: _index, ...group }) => group);
}

/** The context of a block: the heading above it, and the blocks before and after it. */
export interface Surroundings {
  readonly heading: string | null;
  readonly before: string | null;
  readonly after: string | null;
}

/** @param block one of the text's. */
export function surroundingsOf(text: string, block: InstructionBlock): Surroundings {
  const blocks = readInstructions(text);
  const index = block.place.block;
  const heading = blocks.slice(0, index).findLast(({ kind }) => kind === "heading");
  const next = (step: -1 | 1) => {
    const beside = blocks[index + step];
    return beside === undefined || beside.kind === "heading" ? null : beside.text;
  };
  return { heading: heading?.text ?? null, before: next(-1), after: next(1) };
}
