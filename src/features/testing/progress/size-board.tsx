"use client";

import Link from "next/link";
import { TableFrame } from "@/ui/table-frame";

/** How many testers of one size are in each state. */
export interface CountedSize {
  readonly label: string;
  /** By column. */
  readonly counts: readonly number[];
  /** Testers who occupy a spot. */
  readonly standing: number;
  readonly wanted: number;
}

interface SizeBoardProps {
  /** Where open spots are filled; null for viewers. */
  readonly placesHref: string | null;
  readonly columns: readonly string[];
  readonly sizes: readonly CountedSize[];
}

/**
 * A row a size, a column a stage, narrow enough for a phone: a size's spots stand below its name, and there the stages'
 * names stand upright. Sent once, as numbers.
 */
export function SizeBoard({ placesHref, columns, sizes }: SizeBoardProps) {
  return (
    <TableFrame label="Testers by size">
      <table className="stage-table">
        <thead>
          <tr>
            <th scope="col">Size</th>
            {columns.map((column) => (
              <th key={column} scope="col">
                <span>{column}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {sizes.map(({ label, counts, standing, wanted }) => (
            <tr key={label}>
              <th scope="row">
                <bdi>{label}</bdi>
                <Spots {...{ placesHref, standing, wanted }} />
              </th>
              {counts.map((count, column) => (
                <td key={columns[column]} className={count === 0 ? "none" : undefined}>
                  {count}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}

function Spots({
  placesHref,
  standing,
  wanted,
}: Pick<CountedSize, "standing" | "wanted"> & Pick<SizeBoardProps, "placesHref">) {
  const open = wanted - standing;
  return (
    <small>
      {standing} of {wanted}
      {open > 0 && placesHref !== null ? (
        <Link href={placesHref} prefetch={false}>
          Find {open === 1 ? "a tester" : `${open} testers`}
        </Link>
      ) : null}
    </small>
  );
}
