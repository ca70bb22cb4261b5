import { useState } from "react";

/** The list with the item at an index replaced. */
export function replaceItem<Item>(items: readonly Item[], index: number, item: Item): readonly Item[] {
  return items.map((each, i) => (i === index ? item : each));
}

/** The list without the item at an index. */
export function removeItem<Item>(items: readonly Item[], index: number): readonly Item[] {
  return items.filter((_, i) => i !== index);
}

/** The list with the item at an index moved by one: −1 towards the front, 1 towards the end. */
export function moveItem<Item>(items: readonly Item[], index: number, by: -1 | 1): readonly Item[] {
  const [one, other] = [items[index], items[index + by]];
  if (one === undefined || other === undefined) return items;
  return items.map((each, i) => (i === index ? other : i === index + by ? one : each));
}

/** Which items of a list are open, by id. */
export function useOpened(first: readonly string[]) {
  const [opened, setOpened] = useState<ReadonlySet<string>>(() => new Set(first));
  return {
    isOpen: (id: string) => opened.has(id),
    open: (id: string) => setOpened((now) => new Set([...now, id])),
    toggle: (id: string) =>
      setOpened((now) => new Set(now.has(id) ? [...now].filter((each) => each !== id) : [...now, id])),
  };
}
