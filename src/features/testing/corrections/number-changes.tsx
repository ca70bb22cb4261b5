import type { PatternDocument } from "@/engine/pattern";
import type { NumberChange } from "@/features/calls/correction-schema";
import { ChangedNumber } from "./changed-number";

interface NumberChangesProps {
  readonly numbers: readonly NumberChange[];
  readonly pattern: Pick<PatternDocument, "counts" | "sizes">;
  /** The size whose numbers are shown; left out for all. */
  readonly size?: string;
  /** Stands before them. */
  readonly title?: string;
}

/** The numbers that a correction changes, count by count: the old one struck out, the new one beside it. */
export function NumberChanges({ numbers, pattern, size, title }: NumberChangesProps) {
  const shown = size === undefined ? numbers : numbers.filter((change) => change.size === size);
  if (shown.length === 0) return null;
  const counts = [...new Set(shown.map(({ count }) => count))];
  return (
    <>
      {title === undefined ? null : <p className="mt-3 font-semibold">{title}</p>}
      <dl className="numbers mt-1.5 grid gap-1">
        {counts.map((count) => (
          <div key={count} className="flex flex-wrap gap-x-3">
            <dt className="text-soft wrap-anywhere">
              <bdi>{pattern.counts.find(({ id }) => id === count)?.label ?? count}</bdi>
            </dt>
            {shown
              .filter((change) => change.count === count)
              .map((change) => (
                <dd key={change.size} className="whitespace-nowrap">
                  {size === undefined ? (
                    <>
                      <bdi>{pattern.sizes.find(({ id }) => id === change.size)?.label ?? change.size}</bdi>{" "}
                    </>
                  ) : null}
                  <ChangedNumber was={change.was} becomes={change.becomes} />
                </dd>
              ))}
          </div>
        ))}
      </dl>
    </>
  );
}
