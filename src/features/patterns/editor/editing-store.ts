import { createStore, type StoreApi } from "zustand/vanilla";
import { createDraft, type DraftPattern, type PatternDraft } from "@/engine/editing";
import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { afterFrame } from "./after-frame";
import { readWholeDraft, type DraftReading } from "./draft-reading";
import { draftSaver, type DraftStatus } from "./draft-saver";

export interface EditingStart {
  readonly patternId: string;
  readonly base: PatternDocument;
  readonly baseNumber: number;
  readonly unit: LengthUnit;
  readonly content: PatternDraft | null;
  readonly version: number;
}

/** The part of a draft shown immediately, before it is read. */
interface Shown {
  readonly draft: PatternDraft;
  readonly pattern: DraftPattern;
  /** The unit that lengths without one are read in. */
  readonly unit: LengthUnit;
  /** Numbers of the grading that were calculated and not typed since, as `count.size`. */
  readonly solved: ReadonlySet<string>;
  /** False where the draft equals the revision. */
  readonly isEdited: boolean;
  /** The size whose numbers the calculations show. */
  readonly size: string;
}

/** A number of the grading, by the ids of its count and its size. */
export interface GradedCell {
  readonly count: string;
  readonly size: string;
}

/** What every part of the editor knows: the pattern being edited, what can be read of it, and how to change it. */
export interface Editing extends Shown, DraftReading {
  readonly patternId: string;
  /** The newest revision, to which the edits apply. */
  readonly base: PatternDocument;
  readonly baseNumber: number;
  /**
   * Changes the pattern.
   *
   * @param field where it is typed; continued typing in one field is one undo step. Null for a separate edit.
   */
  readonly change: (edit: (pattern: DraftPattern) => DraftPattern, field: string | null) => void;
  readonly changeDraft: (edit: (draft: PatternDraft) => PatternDraft, field: string | null) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly status: DraftStatus;
  readonly send: () => Promise<number | null>;
  /** Starts from what this browser stored. @returns a cleanup function. */
  readonly resume: () => () => void;
  readonly chooseSize: (size: string) => void;
  /** The number of the grading that was typed in or looked at last, about which the table says more. */
  readonly cell: GradedCell | null;
  /** Its size becomes the one whose numbers the calculations show. */
  readonly chooseCell: (cell: GradedCell) => void;
}

/** Typing in one field is one undo step, until the person pauses this long. */
const ONE_STEP_MS = 1_500;
const MOST_STEPS = 200;

/** A pattern being edited: what is typed is shown and stored immediately, and read after it is drawn. */
export function createEditingStore(start: EditingStart): StoreApi<Editing> {
  const { patternId, base, baseNumber } = start;
  const untouched = createDraft(base, start.unit);
  return createStore<Editing>()((set, get) => {
    let content = start.content;
    let chosen: string | null = null;
    let past: readonly (PatternDraft | null)[] = [];
    let future: readonly (PatternDraft | null)[] = [];
    let last: { readonly field: string | null; readonly index: number } = { field: null, index: 0 };
    const saver = draftSaver(start, (status) => set({ status }));
    const read = afterFrame(() => set((now) => readWholeDraft(base, now.draft, now)));
    const show = (next: PatternDraft | null) => {
      content = next;
      set({ ...shown(next, untouched, chosen), canUndo: past.length > 0, canRedo: future.length > 0 });
      read();
    };
    const edit = (next: PatternDraft | null) => {
      show(next);
      if (get().status.kind === "saved") set({ status: { kind: "resting" } });
      saver.edit(next);
    };
    const changeDraft: Editing["changeDraft"] = (change, field) => {
      const index = Date.now();
      const goesOn = field !== null && field === last.field && index - last.index < ONE_STEP_MS;
      last = { field, index };
      if (!goesOn) past = [...past, content].slice(-MOST_STEPS);
      future = [];
      edit(change(get().draft));
    };
    return {
      ...{ patternId, base, baseNumber, changeDraft },
      ...shown(content, untouched, chosen),
      ...readWholeDraft(base, content ?? untouched),
      ...{ canUndo: false, canRedo: false, status: { kind: "resting" } },
      change: (change, field) => changeDraft((draft) => ({ ...draft, pattern: change(draft.pattern) }), field),
      undo: () => {
        const before = past.at(-1);
        if (before === undefined) return;
        last = { field: null, index: 0 };
        future = [content, ...future];
        past = past.slice(0, -1);
        edit(before);
      },
      redo: () => {
        const [next, ...rest] = future;
        if (next === undefined) return;
        last = { field: null, index: 0 };
        past = [...past, content];
        future = rest;
        edit(next);
      },
      send: saver.send,
      resume: () => saver.resume(show),
      chooseSize: (size) => {
        chosen = size;
        set({ size: sizeOf(get().pattern, chosen) });
      },
      cell: null,
      chooseCell: (cell) => {
        chosen = cell.size;
        set({ cell, size: sizeOf(get().pattern, chosen) });
      },
    };
  });
}

function shown(content: PatternDraft | null, untouched: PatternDraft, chosen: string | null): Shown {
  const draft = content ?? untouched;
  const { pattern, unit } = draft;
  const isEdited = content !== null;
  return { draft, pattern, unit, isEdited, solved: new Set(draft.solved), size: sizeOf(pattern, chosen) };
}

function sizeOf({ sizes }: DraftPattern, chosen: string | null): string {
  return sizes.find(({ id }) => id === chosen)?.id ?? sizes[Math.floor(sizes.length / 2)]?.id ?? "";
}
