/** From a number up to another, which is not in it any more. */
interface Interval {
  readonly from: number;
  readonly to: number;
}

interface Stretch<Item> extends Interval {
  readonly items: readonly Item[];
}

/**
 * Cuts a line wherever one of some intervals begins or ends.
 *
 * @param items in any order; none is empty.
 * @returns the stretches between neighbouring cuts in ascending order, each with the intervals that cover it, also where none does.
 */
export function stretchesOf<Item extends Interval>(items: readonly Item[]): Stretch<Item>[] {
  const cuts = new Float64Array(2 * items.length);
  items.forEach(({ from, to }, index) => {
    cuts[2 * index] = from;
    cuts[2 * index + 1] = to;
  });
  cuts.sort();
  const entering = items.toSorted((one, other) => one.from - other.from);
  const stretches: Stretch<Item>[] = [];
  let next = 0;
  let from = cuts[0] ?? 0;
  for (const to of cuts) {
    if (to === from) continue;
    const active = (stretches.at(-1)?.items ?? []).filter((item) => item.to > from);
    for (let item = entering[next]; item !== undefined && item.from === from; item = entering[next]) {
      active.push(item);
      next += 1;
    }
    stretches.push({ from, to, items: active });
    from = to;
  }
  return stretches;
}
