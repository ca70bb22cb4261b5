/** The list with the item at an index replaced. */
export function replaced<Item>(items: readonly Item[], at: number, item: Item): readonly Item[] {
  return items.map((each, index) => (index === at ? item : each));
}

/** The list without the item at an index. */
export function removed<Item>(items: readonly Item[], at: number): readonly Item[] {
  return items.filter((_, index) => index !== at);
}

/** The list with the item at an index moved by one: −1 towards the front, 1 towards the end. */
export function moved<Item>(items: readonly Item[], at: number, by: -1 | 1): readonly Item[] {
  const [one, other] = [items[at], items[at + by]];
  if (one === undefined || other === undefined) return items;
  return items.map((each, index) => (index === at ? other : index === at + by ? one : each));
}
