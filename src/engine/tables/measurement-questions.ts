import type { TableFault } from "./cells";
import type { ReadMeasurement, Breakdown } from "./measurement-table";
import { bodySubstitute } from "./make-pattern";
import type { ReadRows } from "./read-measurement-rows";

/** Finished lengths of a garment for grown people lie between these, cm; common practice, no source. */
const PLAUSIBLE_CM = { any: [1, 250], body: [45, 250] } as const;
const AROUND_THE_BODY = /\b(?:bust|chest|waist|hips?)\b/i;
/** Largest share of a measurement that its count may leave unexplained. */
const MAX_UNEXPLAINED_SHARE = 0.1;
/** A number this much above or below both its neighbours is more often an entry error than a grading. */
const MAX_NEIGHBOUR_RATIO = 1.3;

/**
 * Questions before a pattern is made: numbers that are implausible or out of line with the neighbouring sizes,
 * sizes out of order, and counts that explain too little.
 */
export function measurementQuestions(
  { measurements, bodies, sizes }: ReadRows,
  { breakdowns, columns }: { readonly breakdowns: readonly Breakdown[]; readonly columns: readonly number[] },
): TableFault[] {
  const order = bodies[0] ?? bodySubstitute(measurements);
  return [
    ...measurements.flatMap((measurement) => rangeQuestions(measurement, columns)),
    ...(order ? orderQuestions(order.row, order.cm, { sizes, columns }) : []),
    ...breakdowns.flatMap((breakdown) => restQuestions(breakdown, measurements, sizes)),
  ];
}

function rangeQuestions({ row, label, cm, girth }: ReadMeasurement, columns: readonly number[]): TableFault[] {
  const [min, max] = girth && AROUND_THE_BODY.test(label) ? PLAUSIBLE_CM.body : PLAUSIBLE_CM.any;
  return cm.flatMap((value, index) => {
    const column = columns[index] ?? null;
    if (value < min || value > max)
      return [{ row, column, message: `${label} of ${oneDecimal(value)} cm: is that right?` }];
    const beside = [cm[index - 1], cm[index + 1]].filter((other) => other !== undefined);
    const low = beside.length > 0 && beside.every((other) => value * MAX_NEIGHBOUR_RATIO < other);
    const high = beside.length > 0 && beside.every((other) => value > other * MAX_NEIGHBOUR_RATIO);
    if (!low && !high) return [];
    const message = `${oneDecimal(value)} cm is far ${low ? "below" : "above"} the ${beside.map(oneDecimal).join(" and ")} cm of the sizes beside it. Is that right?`;
    return [{ row, column, message }];
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
    const message = `${sizes[index] ?? ""} is smaller than ${sizes[index - 1] ?? ""} before it; sizes go from the smallest up. Is that right?`;
    return [{ row, column: columns[index] ?? null, message }];
  });
}

function restQuestions(
  { row, countRow, times, countedCm, restCm }: Breakdown,
  measurements: readonly ReadMeasurement[],
  sizes: readonly string[],
): TableFault[] {
  const published = measurements.find((measurement) => measurement.row === row)?.cm ?? [];
  const share = restCm.map((rest, index) => Math.abs(rest) / (published[index] ?? 1));
  const worst = share.indexOf(Math.max(...share));
  if (countRow === null || (share[worst] ?? 0) <= MAX_UNEXPLAINED_SHARE) return [];
  const counted = oneDecimal(countedCm[worst] ?? 0);
  const message =
    `In ${sizes[worst] ?? ""}, ${times === 1 ? "once" : `${times} times`} its count comes to ${counted} cm at your gauge, ` +
    `and the table message ${oneDecimal(published[worst] ?? 0)} cm. Check “times” and the gauge; is the rest really edgings, seams and stretch?`;
  return [{ row, column: null, message }];
}

function oneDecimal(cm: number): string {
  return String(Math.round(cm * 10) / 10);
}
