import type { PatternDocument } from "@/engine/pattern";
import { Day } from "@/ui/day";
import type { SaidAtPlace } from "../said-data";

/** Who said something, in which size, when, and of which revision. */
export function SaidBy({ said, pattern }: { readonly said: SaidAtPlace; readonly pattern: PatternDocument }) {
  const { tester, saidAt, revisionNumber } = said;
  return (
    <p className="text-sm text-soft wrap-anywhere">
      {tester === null ? (
        "a tester who is gone"
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
