"use client";

import { useEffect, useRef } from "react";
import { usesWords } from "./uses";

/** The item last removed from a list. */
export interface TakenOut {
  readonly id: string;
  readonly name: string;
  /** Where it was used and is now missing. */
  readonly uses: readonly string[];
}

interface TakenOutNoteProps {
  readonly last: TakenOut | null;
  /** Ids in the list: the note disappears once undo has restored the item. */
  readonly items: readonly { readonly id: string }[];
}

/** Says what was removed and where it is now missing. It takes the focus, which was in the removed item. */
export function TakenOutNote({ last, items }: TakenOutNoteProps) {
  const note = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    if (last !== null) note.current?.focus();
  }, [last]);
  if (last === null || items.some(({ id }) => id === last.id)) return null;
  return (
    <p ref={note} role="status" tabIndex={-1} className="mb-4 rounded-md border-l-4 border-ink bg-sheet px-4 py-3">
      “{last.name}” removed.{" "}
      {last.uses.length === 0 ? "" : `It was used in ${usesWords(last.uses)}, where it is now marked as missing. `}
      Use Undo to restore it.
    </p>
  );
}
