import type { PatternDocument } from "@/engine/pattern";
import { Day } from "@/ui/day";
import type { PlaceNote } from "../place-notes-data";

/** The tester, the size, the day and the revision. */
export function NoteAuthor({ note, pattern }: { readonly note: PlaceNote; readonly pattern: PatternDocument }) {
  const { tester, createdAt, revisionNumber } = note;
  return (
    <p className="text-sm text-soft wrap-anywhere">
      {tester === null ? (
        "a former tester"
      ) : (
        <>
          <bdi>{tester.name}</bdi>, <bdi>{sizeLabel(pattern, tester.size)}</bdi>
        </>
      )}
      , <Day at={createdAt} />, revision {revisionNumber}
    </p>
  );
}

export function sizeLabel({ sizes }: PatternDocument, id: string): string {
  return sizes.find((size) => size.id === id)?.label ?? id;
}
