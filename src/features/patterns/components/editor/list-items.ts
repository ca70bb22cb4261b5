/** The list with another item at a place. */
export function replaced<Item>(items: readonly Item[], i: number, item: Item): readonly Item[] {
  return items.map((each, index) => (index === i ? item : each));
}

/** The list without the item at a place. */
export function removed<Item>(items: readonly Item[], i: number): readonly Item[] {
  return items.filter((_, index) => index !== i);
}

/** The list with the item at a place moved by one: −1 towards the front, 1 towards the end. */
export function moved<Item>(items: readonly Item[], i: number, by: -1 | 1): readonly Item[] {
  const [one, other] = [items[i], items[i + by]];
  if (one === undefined || other === undefined) return items;
  return items.map((each, index) => (index === i ? other : index === i + by ? one : each));
}
