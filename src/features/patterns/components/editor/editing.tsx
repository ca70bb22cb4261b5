"use client";

import { createContext, useCallback, useContext, useDeferredValue, useMemo, useState, type ReactNode } from "react";
import {
  beginDraft,
  draftQuestions,
  patternChanges,
  readablePart,
  readDraft,
  type DraftPattern,
  type DraftQuestion,
  type PatternChange,
  type PatternDraft,
} from "@/engine/editing";
import { gradingWarnings, type PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { useDraft, type DraftStatus } from "./use-draft";
import { useUndo } from "./use-undo";

export type Says = ReadonlyMap<string, readonly string[]>;

/** What every part of the editor knows: the pattern being edited, what can be read of it, and how to change it. */
export interface Editing {
  readonly patternId: string;
  /** The newest revision, on which the edits stand. */
  readonly base: PatternDocument;
  readonly baseNumber: number;
  readonly pattern: DraftPattern;
  /** The unit that lengths without one are read in. */
  readonly unit: LengthUnit;
  readonly draft: PatternDraft;
  /** False where the draft is the revision, untouched. */
  readonly isEdited: boolean;
  /**
   * Changes the pattern.
   *
   * @param field where it is typed; typing on in one field is one step of undo. Null where the edit stands alone.
   */
  readonly change: (edit: (pattern: DraftPattern) => DraftPattern, field: string | null) => void;
  readonly changeDraft: (edit: (draft: PatternDraft) => PatternDraft, field: string | null) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly status: DraftStatus;
  readonly send: () => Promise<number | null>;
  /** The document that the draft stands for, null while something in it cannot be read. */
  readonly document: PatternDocument | null;
  /** What can be reckoned with of it: without what cannot be read. Null where nothing can. */
  readonly readable: PatternDocument | null;
  /** What the draft changes in the revision; what cannot be read is as typed. */
  readonly changes: readonly PatternChange[];
  /** What is wrong, by path in the draft, as `counts[2].repeat.of`. */
  readonly faults: Says;
  /** Rules that numbers break, by path; they can be saved so. */
  readonly warnings: Says;
  /** Odd numbers, by path as in `editFields`. */
  readonly questions: ReadonlyMap<string, DraftQuestion>;
  /** The size whose numbers stand in the arithmetic. */
  readonly size: string;
  readonly chooseSize: (size: string) => void;
}

const EditingContext = createContext<Editing | null>(null);

/** @throws {Error} outside of the editor. */
export function useEditing(): Editing {
  const editing = useContext(EditingContext);
  if (editing === null) throw new Error("useEditing outside of EditingProvider");
  return editing;
}

export interface EditingStart {
  readonly patternId: string;
  readonly base: PatternDocument;
  readonly baseNumber: number;
  readonly unit: LengthUnit;
  readonly content: PatternDraft | null;
  readonly version: number;
}

export function EditingProvider({ children, ...start }: EditingStart & { readonly children: ReactNode }) {
  const { patternId, base, baseNumber, unit: hers } = start;
  const { content, status, edit, send } = useDraft(start);
  const { step, ...history } = useUndo(content, edit);
  const [chosen, chooseSize] = useState<string | null>(null);
  const untouched = useMemo(() => beginDraft(base, hers), [base, hers]);
  const draft = content ?? untouched;
  const changeDraft = useCallback(
    (change: (draft: PatternDraft) => PatternDraft, field: string | null) => step(change(draft), field),
    [draft, step],
  );
  const change = useCallback(
    (edited: (pattern: DraftPattern) => DraftPattern, field: string | null) =>
      step({ ...draft, pattern: edited(draft.pattern) }, field),
    [draft, step],
  );
  const read = useReading(base, useDeferredValue(draft));
  const { sizes } = draft.pattern;
  const size = sizes.find(({ id }) => id === chosen)?.id ?? sizes[Math.floor(sizes.length / 2)]?.id ?? "";
  return (
    <EditingContext
      value={{
        ...{ patternId, base, baseNumber, draft, changeDraft, change, status, send, size, chooseSize },
        ...history,
        ...read,
        pattern: draft.pattern,
        unit: draft.unit,
        isEdited: content !== null,
      }}
    >
      {children}
    </EditingContext>
  );
}

function useReading(base: PatternDocument, { pattern, unit, meant }: PatternDraft) {
  return useMemo(() => {
    const { document, faults } = readDraft(pattern, unit);
    const readable = document ?? readablePart(pattern, unit);
    // Places in lists differ where something is left out.
    const warnings = gradingWarnings(readable ?? base).filter(
      ({ path }) => document !== null || (readable !== null && path.startsWith("grading.")),
    );
    const questions = readable === null ? [] : draftQuestions(base, readable, meant);
    return {
      document,
      readable,
      changes: patternChanges(base, document ?? pattern),
      faults: byPath(faults),
      warnings: byPath(warnings),
      questions: new Map(questions.map((question) => [question.path, question])),
    };
  }, [base, pattern, unit, meant]);
}

function byPath(faults: readonly { readonly path: string; readonly says: string }[]): Says {
  const says = new Map<string, string[]>();
  for (const fault of faults) says.set(fault.path, [...(says.get(fault.path) ?? []), fault.says]);
  return says;
}
