import type { DraftPattern, PatternDraft, Typed } from "@/engine/editing";
import { ownValue, type Grading } from "@/engine/pattern";

/** A number of the grading in a draft. */
export function gradedText(pattern: DraftPattern, count: string, size: string): Typed | undefined {
  return ownValue(ownValue(pattern.grading, count), size);
}

/** True where a count is locked in a size. */
function isLocked(pattern: DraftPattern, count: string, size: string): boolean {
  return ownValue(pattern.counts.find(({ id }) => id === count)?.locked, size) !== undefined;
}

/** The draft with a typed number, which is no longer calculated or locked. */
export function withNumber(draft: PatternDraft, count: string, size: string, text: Typed): PatternDraft {
  const numbers = { ...ownValue(draft.pattern.grading, count), [size]: text };
  const { [count]: _before, ...others } = draft.pattern.grading ?? {};
  const isEmpty = Object.values(numbers).every((number) => number === "");
  const pattern = { ...draft.pattern, grading: isEmpty ? others : { ...others, [count]: numbers } };
  return {
    ...draft,
    pattern: isLocked(pattern, count, size) ? withLock(pattern, count, size, text) : pattern,
    solved: draft.solved.filter((cell) => cell !== `${count}.${size}`),
  };
}

/** @param number the locked number; null unlocks it. */
export function withLock(pattern: DraftPattern, count: string, size: string, number: Typed | null): DraftPattern {
  return {
    ...pattern,
    counts: pattern.counts.map((each) => {
      if (each.id !== count) return each;
      const { locked = {}, ...rest } = each;
      const { [size]: _before, ...others } = locked;
      const held = number === null || number === "" ? others : { ...others, [size]: number };
      return Object.keys(held).length === 0 ? rest : { ...rest, locked: held };
    }),
  };
}

/** The draft with a calculated grading; counts that it leaves out stay as they are. @param unlocked it was calculated without the locks, which are removed. */
export function withGrading(draft: PatternDraft, grading: Grading, unlocked: boolean): PatternDraft {
  const counts = unlocked ? draft.pattern.counts.map(({ locked: _locked, ...count }) => count) : draft.pattern.counts;
  const pattern = { ...draft.pattern, counts, grading: { ...draft.pattern.grading, ...grading } };
  const calculated = pattern.counts.filter(({ id }) => ownValue(grading, id) !== undefined);
  const cells = calculated.flatMap(({ id }) => pattern.sizes.map((size) => [id, size.id] as const));
  const solved = cells.filter(([count, size]) => !isLocked(pattern, count, size)).map((cell) => cell.join("."));
  const others = draft.solved.filter((cell) => !calculated.some(({ id }) => cell.startsWith(`${id}.`)));
  return { ...draft, pattern, solved: [...others, ...solved] };
}
