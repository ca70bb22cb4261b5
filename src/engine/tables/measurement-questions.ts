import type { TableFault } from "./cells";
import type { ReadMeasurement, Reckoning } from "./measurement-table";
import { standsForBody } from "./make-pattern";
import type { ReadRows } from "./read-measurement-rows";

/** Finished lengths of a garment for grown people lie between these, cm; common practice, no source. */
const REACH = { any: [1, 250], body: [45, 250] } as const;
const AROUND_THE_BODY = /\b(?:bust|chest|waist|hips?)\b/i;
/** Part of a measurement that its count should leave unexplained at most. */
const LARGE_REST = 0.1;
/** A number this much above or below both its neighbours is a slip more often than a grading. */
const OUT_OF_LINE = 1.3;

/**
 * What is asked back before a pattern is made: numbers out of human reach or out of line with the sizes beside them,
 * sizes out of order, and counts that explain too little.
 */
export function measurementQuestions(
  { measurements, bodies, sizes }: ReadRows,
  { reckonings, columns }: { readonly reckonings: readonly Reckoning[]; readonly columns: readonly number[] },
): TableFault[] {
  const order = bodies[0] ?? standsForBody(measurements);
  return [
    ...measurements.flatMap((measurement) => reachQuestions(measurement, columns)),
    ...(order ? orderQuestions(order.row, order.cm, { sizes, columns }) : []),
    ...reckonings.flatMap((reckoning) => restQuestions(reckoning, measurements, sizes)),
  ];
}

function reachQuestions({ row, label, cm, girth }: ReadMeasurement, columns: readonly number[]): TableFault[] {
  const [least, most] = girth && AROUND_THE_BODY.test(label) ? REACH.body : REACH.any;
  return cm.flatMap((value, index) => {
    const column = columns[index] ?? null;
    if (value < least || value > most) return [{ row, column, says: `${label} of ${tidy(value)} cm: is that right?` }];
    const beside = [cm[index - 1], cm[index + 1]].filter((other) => other !== undefined);
    const low = beside.length > 0 && beside.every((other) => value * OUT_OF_LINE < other);
    const high = beside.length > 0 && beside.every((other) => value > other * OUT_OF_LINE);
    if (!low && !high) return [];
    const says = `${tidy(value)} cm is far ${low ? "below" : "above"} the ${beside.map(tidy).join(" and ")} cm of the sizes beside it. Is that right?`;
    return [{ row, column, says }];
  });
}

function orderQuestions(
  row: number,
  cm: readonly number[],
  { sizes, columns }: { readonly sizes: readonly string[]; readonly columns: readonly number[] },
): TableFault[] {
  return cm.flatMap((value, index) => {
    const before = cm[index - 1];
    if (before === undefined || value >= before) return [];
    const says = `${sizes[index] ?? ""} is smaller than ${sizes[index - 1] ?? ""} before it; sizes go from the smallest up. Is that right?`;
    return [{ row, column: columns[index] ?? null, says }];
  });
}

function restQuestions(
  { row, countRow, times, countedCm, restCm }: Reckoning,
  measurements: readonly ReadMeasurement[],
  sizes: readonly string[],
): TableFault[] {
  const published = measurements.find((measurement) => measurement.row === row)?.cm ?? [];
  const share = restCm.map((rest, index) => Math.abs(rest) / (published[index] ?? 1));
  const worst = share.indexOf(Math.max(...share));
  if (countRow === null || (share[worst] ?? 0) <= LARGE_REST) return [];
  const counted = tidy(countedCm[worst] ?? 0);
  const says =
    `In ${sizes[worst] ?? ""}, ${times === 1 ? "once" : `${times} times`} its count comes to ${counted} cm at your gauge, ` +
    `and the table says ${tidy(published[worst] ?? 0)} cm. Check “times” and the gauge; is the rest really edgings, seams and stretch?`;
  return [{ row, column: null, says }];
}

function tidy(cm: number): string {
  return String(Math.round(cm * 10) / 10);
}
