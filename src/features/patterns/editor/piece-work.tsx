"use client";

import { useDeferredValue, useMemo } from "react";
import { shapeDraft, type ShapedDraft } from "@/engine/editing";
import { useEditing } from "./editing";
import { AddButton } from "./item-buttons";
import { moveItem, removeItem, replaceItem } from "./list-items";
import { nextSection, type DraftSection, type PieceEdit } from "./piece-edit";
import { PieceInNumbers } from "./piece-in-numbers";
import { SectionRow } from "./section-row";

/** The sections of a piece in the order they are worked, with the schematic and their stitches. */
export function PieceWork({ piece, i, onPiece }: PieceEdit) {
  const shaped = useShaped(piece);
  const { sections } = piece;
  const set = (next: readonly DraftSection[], field: string | null) => onPiece({ ...piece, sections: next }, field);
  const head = `sections-${piece.id}`;
  return (
    <section aria-labelledby={head}>
      <h4 id={head} className="font-serif text-lg font-semibold">
        How it is worked
      </h4>
      <p className="mb-3 text-sm text-soft">One section for each stretch that is worked the same way, in order.</p>
      <div className="grid gap-x-8 gap-y-6 xl:grid-cols-[minmax(0,1fr)_20rem]">
        <div>
          <ol className="grid gap-3">
            {sections.map((section, index) => (
              <SectionRow
                key={index}
                at={["pieces", i, "sections", index]}
                section={section}
                number={index + 1}
                noun={shaped?.noun ?? "row"}
                sized={shaped?.sections[index]?.sizes}
                onSection={(next, field) =>
                  set(replaceItem(sections, index, next), field && `sections[${index}].${field}`)
                }
                onUp={index === 0 ? undefined : () => set(moveItem(sections, index, -1), null)}
                onDown={index === sections.length - 1 ? undefined : () => set(moveItem(sections, index, 1), null)}
                onRemove={() => set(removeItem(sections, index), null)}
              />
            ))}
          </ol>
          <div className="mt-3">
            <AddButton label="A section" onAdd={() => set([...sections, nextSection(piece)], null)} />
          </div>
        </div>
        {shaped ? <PieceInNumbers shaped={shaped} piece={piece} /> : null}
      </div>
    </section>
  );
}

/** Typing has priority over drawing. */
function useShaped(piece: PieceEdit["piece"]): ShapedDraft | null {
  const { readable, size, unit } = useEditing("readable", "size", "unit");
  const typed = useDeferredValue(piece);
  return useMemo(
    () => (readable === null ? null : shapeDraft({ readable, piece: typed, size, unit })),
    [readable, typed, size, unit],
  );
}
