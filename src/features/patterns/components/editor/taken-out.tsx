"use client";

import { useEffect, useRef } from "react";
import { usesWords } from "./where-used";

/** What was taken out of a list last. */
export interface TakenOut {
  readonly id: string;
  readonly name: string;
  /** Where it was used, and is missing now. */
  readonly uses: readonly string[];
}

interface TakenOutNoteProps {
  readonly last: TakenOut | null;
  /** What stands in the list: the note goes once undo has brought the item back. */
  readonly items: readonly { readonly id: string }[];
}

/** Says what was taken out and where it is missing now. It takes the focus, whose place went with the item. */
export function TakenOutNote({ last, items }: TakenOutNoteProps) {
  const note = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    if (last !== null) note.current?.focus();
  }, [last]);
  if (last === null || items.some(({ id }) => id === last.id)) return null;
  return (
    <p ref={note} role="status" tabIndex={-1} className="mb-4 rounded-md border-l-4 border-ink bg-sheet px-4 py-3">
      “{last.name}” is taken out.{" "}
      {last.uses.length === 0 ? "" : `It was used in ${usesWords(last.uses)}, where it is told as missing. `}
      Undo brings it back.
    </p>
  );
}
