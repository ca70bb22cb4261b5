import type { ReadReport } from "@/engine/reporting";
import type { ReportPart, StoredReport } from "@/features/calls/report-schema";

type Report = ReadReport["report"];

/** Where items that are read stand in the report as stored; null for one that is not found there. */
export type StoredPositions = Readonly<Record<ReportPart, readonly (number | null)[]>>;

/** Where the items of a report as it is read stand in the stored one, whose order may be another. */
export function storedPositions(read: Report, stored: StoredReport): StoredPositions {
  return {
    swatches: positionsIn(stored.swatches, read.swatches, (one, other) =>
      [one.fabric === other.fabric, one.stitches === other.stitches, one.rows === other.rows].every(Boolean),
    ),
    readings: positionsIn(stored.readings, read.readings, (one, other) =>
      [one.measurement === other.measurement, Math.abs(one.cm - other.cm) < SAME_CM].every(Boolean),
    ),
    yarn: positionsIn(stored.yarn, read.yarn, (one, other) =>
      [one.yarn === other.yarn, one.grams === other.grams].every(Boolean),
    ),
  };
}

const SAME_CM = 1e-6;

function positionsIn<Item>(
  stored: readonly Item[],
  read: readonly Item[],
  isSame: (one: Item, other: Item) => boolean,
): (number | null)[] {
  const taken = new Set<number>();
  return read.map((item) => {
    const position = stored.findIndex((other, index) => !taken.has(index) && isSame(item, other));
    if (position === -1) return null;
    taken.add(position);
    return position;
  });
}
