"use client";

import Link from "next/link";
import { MatrixTable } from "@/ui/matrix-table";

/** How many testers of one size are where. */
export interface CountedSize {
  readonly label: string;
  /** By column. */
  readonly counts: readonly number[];
  /** Testers who take a place. */
  readonly standing: number;
  readonly wanted: number;
}

interface SizeBoardProps {
  /** Where empty places are filled; null for who may not. */
  readonly placesHref: string | null;
  readonly columns: readonly string[];
  readonly sizes: readonly CountedSize[];
}

/** How many testers of each size are where, and whether a place of it stands empty; sent once, as numbers. */
export function SizeBoard({ placesHref, columns, sizes }: SizeBoardProps) {
  return (
    <MatrixTable
      label="Testers by size"
      corner="Size"
      columns={[...columns, "Places"].map((label) => ({ key: label, label }))}
      rows={sizes.map(({ label, counts, standing, wanted }, at) => ({
        key: String(at),
        head: <span className="font-serif text-lg">{label}</span>,
        cells: [...counts, <PlaceCell key="places" {...{ placesHref, standing, wanted }} />],
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
    <>
      {standing} of {wanted}
      {standing < wanted && placesHref !== null ? (
        <Link href={placesHref} prefetch={false} className="text-link block min-h-6 whitespace-nowrap">
          Fill a place
        </Link>
      ) : null}
    </>
  );
}
