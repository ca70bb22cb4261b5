import { cmOfSize, ownValue, statedGauge, type PatternDocument, type StepNumber, type StepOf } from "../pattern";
import { lengthOfCount } from "../units";

/** The number of a step in a size; `value` is the nearest whole number where `message` says that it does not come out whole. */
interface SizedNumber {
  readonly value: number;
  readonly message: string | null;
}

/** What a garment is worked from in one size: numbers of steps, and the size of a stitch in each fabric, cm. */
export interface SizeNumbers {
  readonly numberOf: (number: StepNumber) => SizedNumber;
  readonly rowsOf: (rows: StepOf<"work">["rows"], fabric: string) => SizedNumber;
  readonly stitchCm: (fabric: string) => number;
  readonly rowCm: (fabric: string) => number;
}

/**
 * Numbers of a pattern in a size. Stitches are as large as in the finished fabric: stated gauge, settled. A length worked to a
 * ruler is as many rows as come nearest to it, after it has grown in blocking where it is measured while working.
 *
 * @param pattern a parsed pattern whose counts all have numbers.
 * @param size id of one of its sizes.
 * @throws {RangeError} on an unknown id or a missing number, which the document's checks rule out.
 */
export function sizeNumbers(pattern: PatternDocument, size: string): SizeNumbers {
  const fabrics = new Map(
    pattern.fabrics.map((fabric) => {
      const { stitchesPerCm, rowsPerCm } = statedGauge(fabric);
      const { across = 1, along = 1 } = fabric.settles ?? {};
      return [
        fabric.id,
        { stitchCm: lengthOfCount(1, stitchesPerCm) * across, rowCm: lengthOfCount(1, rowsPerCm) * along },
      ];
    }),
  );
  const counts = new Map(pattern.counts.map((count) => [count.id, count]));
  const lengths = new Map(pattern.lengths?.map((length) => [length.id, length]));
  const numberOf = (number: StepNumber): SizedNumber => {
    if (typeof number === "number") return { value: number, message: null };
    const { times = 1, over = 1 } = number;
    const { label } = known(counts.get(number.count), number.count);
    const count = known(ownValue(ownValue(pattern.grading, number.count), size), number.count);
    const value = (count * times) / over;
    if (Number.isInteger(value)) return { value, message: null };
    const sum = `“${label}”${times === 1 ? "" : ` × ${times}`} ÷ ${over}`;
    const message = `${sum} is ${numberText(value)} here, and must be whole. Change “${label}”, which is ${count}.`;
    return { value: Math.round(value), message };
  };
  const sizeOf = (fabric: string) => known(fabrics.get(fabric), fabric);
  return {
    numberOf,
    rowsOf: (rows, fabric) => {
      if (typeof rows === "number" || !("length" in rows)) return numberOf(rows);
      const length = known(lengths.get(rows.length), rows.length);
      const growth = (rows.measured ?? length.measured) === "working" ? (length.growth ?? 1) : 1;
      return { value: Math.round((cmOfSize(length.cm, size) * growth) / sizeOf(fabric).rowCm), message: null };
    },
    stitchCm: (fabric) => sizeOf(fabric).stitchCm,
    rowCm: (fabric) => sizeOf(fabric).rowCm,
  };
}

/** At most two decimals. */
export function numberText(value: number): string {
  return String(Math.round(value * 100) / 100);
}

function known<Value>(value: Value | undefined, id: string): Value {
  if (value === undefined) throw new RangeError(`unknown id ${id}`);
  return value;
}
