import { useCallback, useRef, useState } from "react";
import type { PatternDraft } from "@/engine/editing";

/** Typing in one field is one step, until she rests as long as this. */
const ONE_STEP_MS = 1_500;
const MOST_STEPS = 200;

interface Step {
  readonly field: string | null;
  readonly at: number;
}

/**
 * Steps back and forth through what was edited.
 *
 * @param now what is edited at present.
 * @param edit makes something else of it.
 */
export function useUndo(now: PatternDraft | null, edit: (next: PatternDraft | null) => void) {
  const [past, setPast] = useState<readonly (PatternDraft | null)[]>([]);
  const [future, setFuture] = useState<readonly (PatternDraft | null)[]>([]);
  const last = useRef<Step>({ field: null, at: 0 });

  /** @param field where it was typed, null where the edit stands alone. */
  const step = useCallback(
    (next: PatternDraft, field: string | null) => {
      const at = Date.now();
      const goesOn = field !== null && field === last.current.field && at - last.current.at < ONE_STEP_MS;
      last.current = { field, at };
      if (!goesOn) setPast((steps) => [...steps, now].slice(-MOST_STEPS));
      setFuture([]);
      edit(next);
    },
    [edit, now],
  );
  const undo = useCallback(() => {
    const before = past.at(-1);
    if (before === undefined) return;
    last.current = { field: null, at: 0 };
    setPast(past.slice(0, -1));
    setFuture([now, ...future]);
    edit(before);
  }, [edit, future, now, past]);
  const redo = useCallback(() => {
    const [next, ...rest] = future;
    if (next === undefined) return;
    last.current = { field: null, at: 0 };
    setPast([...past, now]);
    setFuture(rest);
    edit(next);
  }, [edit, future, now, past]);
  return { step, undo, redo, canUndo: past.length > 0, canRedo: future.length > 0 };
}
