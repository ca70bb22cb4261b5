"use client";

import Link from "next/link";
import { MatrixTable } from "@/ui/matrix-table";

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

/** How many testers of each size are in each state, and its open spots; sent once, as numbers. */
export function SizeBoard({ placesHref, columns, sizes }: SizeBoardProps) {
  return (
    <MatrixTable
      label="Testers by size"
      corner="Size"
      columns={["Spots", ...columns].map((label) => ({ key: label, label }))}
      rows={sizes.map(({ label, counts, standing, wanted }, index) => ({
        key: String(index),
        head: <span className="font-serif text-lg">{label}</span>,
        cells: [
          <PlaceCell key="places" {...{ placesHref, standing, wanted }} />,
          ...counts.map((count, column) => (
            <span key={column} className={count === 0 ? "text-soft" : "font-semibold"}>
              {count}
            </span>
          )),
        ],
      }))}
    />
  );
}

function PlaceCell({
  placesHref,
  standing,
  wanted,
}: Pick<CountedSize, "standing" | "wanted"> & Pick<SizeBoardProps, "placesHref">) {
  return (
    <span className="flex justify-end gap-x-4 whitespace-nowrap">
      {standing < wanted && placesHref !== null ? (
        <Link href={placesHref} prefetch={false} className="text-link inline-block min-h-6">
          Find a tester
        </Link>
      ) : null}
      <span>
        {standing} of {wanted}
      </span>
    </span>
  );
}
