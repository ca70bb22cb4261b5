import type { PatternDocument } from "@/engine/pattern";
import { Day } from "@/ui/day";
import type { SaidAtPlace } from "../said-data";

/** The tester, the size, the day and the revision. */
export function SaidBy({ said, pattern }: { readonly said: SaidAtPlace; readonly pattern: PatternDocument }) {
  const { tester, saidAt, revisionNumber } = said;
  return (
    <p className="text-sm text-soft wrap-anywhere">
      {tester === null ? (
        "a former tester"
      ) : (
        <>
          <bdi>{tester.name}</bdi>, <bdi>{sizeLabel(pattern, tester.size)}</bdi>
        </>
      )}
      , <Day at={saidAt} />, revision {revisionNumber}
    </p>
  );
}

export function sizeLabel({ sizes }: PatternDocument, id: string): string {
  return sizes.find((size) => size.id === id)?.label ?? id;
}
