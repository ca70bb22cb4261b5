"use client";

import { MatrixTable } from "@/ui/matrix-table";

interface FinishedNumbersProps {
  readonly corner: string;
  /** Their labels. */
  readonly sizes: readonly string[];
  readonly measurements: readonly {
    readonly id: string;
    readonly letter: string;
    readonly label: string;
    /** By size; null if not known yet. */
    readonly lengths: readonly (string | null)[];
  }[];
}

/** Finished measurements by size. A client component, so that the table is sent once, as numbers. */
export function FinishedNumbers({ corner, sizes, measurements }: FinishedNumbersProps) {
  return (
    <MatrixTable
      label="Finished measurements"
      corner={corner}
      columns={sizes.map((label, index) => ({ key: String(index), label }))}
      rows={measurements.map(({ id, letter, label, lengths }) => ({
        key: id,
        head: (
          <>
            <span className="font-semibold">{letter}</span> {label}
          </>
        ),
        cells: lengths.map((length, index) => (
          <span key={index} className="numbers">
            {length ?? <span className="text-soft">not yet</span>}
          </span>
        )),
      }))}
    />
  );
}
