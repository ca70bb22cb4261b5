import type { Count } from "../pattern";
import type { Choice } from "./size-choices";

/** The least unevenness that is possible where single counts are looked at apart, which no path through all of them can undercut; choices by index. */
export interface UnevennessBounds {
  /** Of a path through this choice of a size. */
  readonly through: (size: number, choice: number) => number;
  /** Of what follows two choices of neighbouring sizes, from the bend at the second on. @param size of the second. */
  readonly after: (size: number, first: number, second: number) => number;
}

/** One count: its values in each size. */
interface CountValues {
  readonly values: readonly (readonly number[])[];
  readonly mayShrink: boolean;
}

/** By size: least unevenness of each pair of a value there and one in the next size, row by row; infinite where the pair may not be. */
type PairCosts = readonly Float64Array[];

/**
 * Bounds for paths through layers of choices, a layer a size.
 *
 * @param counts of the group, in the order of the choices' numbers.
 * @see docs/method.md#grading.
 */
export function unevennessBounds(layers: readonly (readonly Choice[])[], counts: readonly Count[]): UnevennessBounds {
  const tables = counts.map(({ mayShrink = false }, index) => {
    const own = layers.map((choices) => choices.map(({ numbers }) => numbers[index] ?? Number.NaN));
    const values = own.map((numbers) => [...new Set(numbers)]);
    const valueOf = own.map((numbers, size) =>
      Int32Array.from(numbers, (value) => (values[size] ?? []).indexOf(value)),
    );
    return { valueOf, values, ...costsOf({ values, mayShrink }) };
  });
  return {
    through: (size, choice) => {
      let sum = 0;
      for (const { through, valueOf } of tables)
        sum += through[size]?.[valueOf[size]?.[choice] ?? -1] ?? Number.POSITIVE_INFINITY;
      return sum;
    },
    after: (size, first, second) => {
      let sum = 0;
      for (const { after, values, valueOf } of tables) {
        const row = (valueOf[size - 1]?.[first] ?? -1) * (values[size]?.length ?? 0);
        sum += after[size - 1]?.[row + (valueOf[size]?.[second] ?? -1)] ?? Number.POSITIVE_INFINITY;
      }
      return sum;
    },
  };
}

function costsOf({ values, mayShrink }: CountValues): { readonly after: PairCosts; readonly through: PairCosts } {
  const after = costsAfter(values, (from, to) => mayShrink || to >= from);
  const before = costsAfter(values.toReversed(), (from, to) => mayShrink || to <= from).toReversed();
  const last = values.length - 1;
  const through = values.map((own, size) =>
    Float64Array.from(own, (_, value) => {
      if (last === 0) return 0;
      const [from, to] = size === last ? [size - 1, size] : [size, size + 1];
      let least = Number.POSITIVE_INFINITY;
      const others = values[size === last ? from : to]?.length ?? 0;
      for (let other = 0; other < others; other += 1) {
        const [first, second] = size === last ? [other, value] : [value, other];
        const onward = after[from]?.[first * (values[to]?.length ?? 0) + second] ?? Number.POSITIVE_INFINITY;
        const back = before[from]?.[second * (values[from]?.length ?? 0) + first] ?? Number.POSITIVE_INFINITY;
        least = Math.min(least, onward + back);
      }
      return least;
    }),
  );
  return { after, through };
}

/** Of each pair of values that may follow each other, the least unevenness of the bends from its second value on. */
function costsAfter(
  values: readonly (readonly number[])[],
  leads: (from: number, to: number) => boolean,
): Float64Array[] {
  const costs: Float64Array[] = [];
  for (let layer = values.length - 2; layer >= 0; layer -= 1) {
    const [firsts = [], seconds = [], thirds] = values.slice(layer, layer + 3);
    const onward = costs[0];
    const own = new Float64Array(firsts.length * seconds.length).fill(Number.POSITIVE_INFINITY);
    for (const [row, first] of firsts.entries())
      for (const [column, second] of seconds.entries())
        if (leads(first, second))
          own[row * seconds.length + column] = leastBend({ first, second, column, thirds, onward });
    costs.unshift(own);
  }
  return costs;
}

interface Bend {
  readonly first: number;
  readonly second: number;
  /** Of the second, as a row of what follows. */
  readonly column: number;
  readonly thirds?: readonly number[];
  readonly onward?: Float64Array;
}

function leastBend({ first, second, column, thirds, onward }: Bend): number {
  if (thirds === undefined || onward === undefined) return 0;
  let least = Number.POSITIVE_INFINITY;
  for (let index = 0; index < thirds.length; index += 1) {
    const bend = Math.abs((thirds[index] ?? 0) - 2 * second + first);
    const cost = bend + (onward[column * thirds.length + index] ?? Number.POSITIVE_INFINITY);
    if (cost < least) least = cost;
  }
  return least;
}
