import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { finishedChanges } from "./finished-changes";
import { comparedSizes, sizedChanges, type SizedChange } from "./sized-changes";

interface SizeChangesProps {
  readonly before: PatternDocument;
  readonly after: PatternDocument;
  /** Id of the reader's size. */
  readonly size: string;
  readonly unit: LengthUnit;
}

/** More stand folded, so that they push nothing else off a phone. */
const MAX_OPEN = 6;

/** What differs between two revisions in one size: the numbers that are worked, then what the garment measures. */
export function SizeChanges({ before, after, size, unit }: SizeChangesProps) {
  const index = comparedSizes(before, after).findIndex(({ key }) => key === size);
  const parts = (["counts", "lengths", "allowances"] as const).flatMap((part) =>
    sizedChanges(before, after, { part, unit }),
  );
  const finished = finishedChanges(before, after, unit).map((change) => ({
    ...change,
    key: `finished ${change.key}`,
    label: `${change.label}, finished, ${unit}`,
  }));
  const rows = [...parts, ...finished].flatMap((change) => rowOf(change, index));
  const open = rows.slice(0, MAX_OPEN);
  const folded = rows.slice(MAX_OPEN);
  return (
    <>
      {rows.length === 0 ? <p>No number of this size.</p> : <ChangedNumbers rows={open} />}
      {folded.length === 0 ? null : (
        <details>
          <summary className="text-link inline-flex min-h-9 items-center">{folded.length} more</summary>
          <ChangedNumbers rows={folded} />
        </details>
      )}
      {before.instructions === after.instructions ? null : (
        <p className="mt-1">The written instructions have changed too.</p>
      )}
    </>
  );
}

interface ChangedNumber {
  readonly key: string;
  readonly label: string;
  readonly was: string;
  readonly becomes: string;
}

/** @param index of the size; a change with a single side stands for all sizes. */
function rowOf({ key, label, sides }: SizedChange, index: number): ChangedNumber[] {
  const side = sides.length === 1 ? sides[0] : sides[index];
  if (side === undefined || side.was === side.becomes) return [];
  return [{ key, label, was: side.was ?? "none", becomes: side.becomes ?? "none" }];
}

function ChangedNumbers({ rows }: { readonly rows: readonly ChangedNumber[] }) {
  return (
    <dl className="numbers">
      {rows.map(({ key, label, was, becomes }) => (
        <div key={key} className="flex flex-wrap justify-between gap-x-4 border-b border-line py-1 last:border-b-0">
          <dt className="min-w-0 wrap-anywhere">{label}</dt>
          <dd className="whitespace-nowrap">
            <span className="text-soft">{was}</span>{" "}
            <span aria-label="becomes" role="img">
              →
            </span>{" "}
            <strong>{becomes}</strong>
          </dd>
        </div>
      ))}
    </dl>
  );
}
