import { draftPatternSchema, type DraftPattern } from "./draft-pattern";
import { isIdList, isRecord, type IdItem } from "./id-list";

/**
 * Applies one change of a pattern to another version of it.
 *
 * @param into the version to change.
 * @param from the version that has the change.
 * @param path of the change, as returned by `patternChanges`.
 */
export function applyChange(into: DraftPattern, from: DraftPattern, path: string): DraftPattern {
  return draftPatternSchema.parse(applyAt(into, from, path.split(".")));
}

function applyAt(into: unknown, from: unknown, [key, ...rest]: readonly string[]): unknown {
  if (key === undefined) return from;
  if (isIdList(into) && isIdList(from)) return applyToItem(into, from, [key, ...rest]);
  if (!isRecord(into) || !isRecord(from)) return from;
  const { [key]: was, ...others } = into;
  const becomes = applyAt(was, from[key], rest);
  return becomes === undefined ? others : { ...into, [key]: becomes };
}

function applyToItem(into: readonly IdItem[], from: readonly IdItem[], [id, ...rest]: readonly string[]): unknown {
  const changed = from.find((item) => item.id === id);
  const index = into.findIndex((item) => item.id === id);
  if (id === "order" && index === -1) return inOrderOf(into, from);
  if (changed === undefined) return into.filter((item) => item.id !== id);
  return index === -1 ? [...into, changed] : into.map((item) => (item.id === id ? applyAt(item, changed, rest) : item));
}

/** Items that only one side has go to the end. */
function inOrderOf(items: readonly IdItem[], order: readonly IdItem[]): IdItem[] {
  const rank = new Map(order.map(({ id }, index) => [id, index]));
  return items.toSorted((left, right) => (rank.get(left.id) ?? order.length) - (rank.get(right.id) ?? order.length));
}
