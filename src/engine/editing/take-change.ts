import { draftPatternSchema, type DraftPattern } from "./draft-pattern";
import { isIdList, isRecord, type IdItem } from "./id-list";

/**
 * One change of a pattern taken over into another version of it.
 *
 * @param into the version that is kept otherwise.
 * @param from the version that has the change.
 * @param path of the change, as `patternChanges` gives it.
 */
export function takeChange(into: DraftPattern, from: DraftPattern, path: string): DraftPattern {
  return draftPatternSchema.parse(taken(into, from, path.split(".")));
}

function taken(into: unknown, from: unknown, [key, ...rest]: readonly string[]): unknown {
  if (key === undefined) return from;
  if (isIdList(into) && isIdList(from)) return takenItem(into, from, [key, ...rest]);
  if (!isRecord(into) || !isRecord(from)) return from;
  const { [key]: was, ...others } = into;
  const becomes = taken(was, from[key], rest);
  return becomes === undefined ? others : { ...into, [key]: becomes };
}

function takenItem(into: readonly IdItem[], from: readonly IdItem[], [id, ...rest]: readonly string[]): unknown {
  const theirs = from.find((item) => item.id === id);
  const at = into.findIndex((item) => item.id === id);
  if (id === "order" && at === -1) return inOrderOf(into, from);
  if (theirs === undefined) return into.filter((item) => item.id !== id);
  return at === -1 ? [...into, theirs] : into.map((item) => (item.id === id ? taken(item, theirs, rest) : item));
}

/** Items that only one side has stay at the end. */
function inOrderOf(items: readonly IdItem[], order: readonly IdItem[]): IdItem[] {
  const rank = new Map(order.map(({ id }, at) => [id, at]));
  return items.toSorted((left, right) => (rank.get(left.id) ?? order.length) - (rank.get(right.id) ?? order.length));
}
