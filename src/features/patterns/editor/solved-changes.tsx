import { ownValue, type Grading, type PatternDocument } from "@/engine/pattern";
import { MatrixTable } from "@/ui/matrix-table";

interface SolvedChangesProps {
  /** With the numbers as they are. */
  readonly pattern: PatternDocument;
  /** The numbers as they would become. */
  readonly grading: Grading;
}

/** The counts that would change, each with its number as it is below the new one. */
export function SolvedChanges({ pattern, grading }: SolvedChangesProps) {
  const { counts, sizes } = pattern;
  const now = (count: string, size: string) => ownValue(ownValue(pattern.grading, count), size);
  const then = (count: string, size: string) => ownValue(ownValue(grading, count), size);
  const changes = (count: string, size: string) => now(count, size) !== then(count, size);
  const changed = counts.filter(({ id }) => sizes.some((size) => changes(id, size.id)));
  if (changed.length === 0) return <p className="text-soft">These are the numbers that you have.</p>;
  return (
    <MatrixTable
      label="What would change"
      corner="What would change"
      columns={sizes.map(({ id, label }) => ({ key: id, label }))}
      rows={changed.map(({ id, label }) => ({
        key: id,
        head: label,
        cells: sizes.map((size) => (
          <span key={size.id} className={`numbers ${changes(id, size.id) ? "font-semibold" : "text-soft"}`}>
            {then(id, size.id)}
            {changes(id, size.id) && now(id, size.id) !== undefined ? (
              <span className="block whitespace-nowrap text-xs font-normal text-soft">now {now(id, size.id)}</span>
            ) : null}
          </span>
        )),
      }))}
    />
  );
}
