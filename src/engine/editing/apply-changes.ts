import { ownValue, type PatternDocument } from "../pattern";
import { isIdList, isRecord, ORDER, withValueAt, type IdItem } from "./document-path";
import { draftPatternSchema, type DraftPattern, type PatternDraft } from "./draft-pattern";
import { patternChanges } from "./pattern-changes";

/**
 * Applies changes of a pattern to another version of it.
 *
 * @param into the version to change.
 * @param from the version that has the changes.
 * @param paths of the changes, in the order in which `patternChanges` returns them.
 */
export function applyChanges(into: DraftPattern, from: DraftPattern, paths: readonly string[]): DraftPattern {
  return draftPatternSchema.parse(
    paths.reduce<unknown>((done, path) => applyChange(done, from, path.split(".")), into),
  );
}

/**
 * Moves a draft to another revision.
 *
 * @param from the revision that it was started on.
 * @param onto the revision that it is moved to.
 * @returns `onto` with all changes that the draft makes to `from`.
 */
export function rebaseDraft(draft: PatternDraft, from: PatternDocument, onto: PatternDocument): PatternDraft {
  const paths = patternChanges(from, draft.pattern).map(({ path }) => path);
  return { ...draft, pattern: applyChanges(onto, draft.pattern, paths) };
}

/** Where one side has not what the path goes through, the smallest part that both can have is taken over whole. */
function applyChange(into: unknown, from: unknown, path: readonly string[]): unknown {
  let [part, becomes] = [into, from];
  for (const [depth, key] of path.entries()) {
    const above = path.slice(0, depth);
    const items = idLists(part, becomes);
    if (items !== null && (key === ORDER || !items.every((list) => itemOf(list, key) !== undefined))) {
      const list = key === ORDER ? inOrderOf(...items) : withItemOf(...items, key);
      return withValueAt(into, above, list.length === 0 ? becomes : list);
    }
    if (items === null && !areAlike(part, becomes, path[0])) return withValueAt(into, above, becomes);
    [part, becomes] = [memberOf(part, key), memberOf(becomes, key)];
  }
  return withValueAt(into, path, becomes);
}

type IdLists = readonly [readonly IdItem[], readonly IdItem[]];

/** A list that is left out is empty. */
function idLists(into: unknown, from: unknown): IdLists | null {
  if (into === undefined && from === undefined) return null;
  const [one, other] = [into ?? [], from ?? []];
  return isIdList(one) && isIdList(other) ? [one, other] : null;
}

/** Whether members of one can be put into the other: a target is a body measurement with ease, or a length by size. */
function areAlike(into: unknown, from: unknown, list: string | undefined): boolean {
  if (list === "grading" && into === undefined) return isRecord(from);
  if (!isRecord(into) || !isRecord(from)) return false;
  return list !== "measurements" || Object.hasOwn(into, "body") === Object.hasOwn(from, "body");
}

function memberOf(part: unknown, key: string): unknown {
  if (isIdList(part)) return itemOf(part, key);
  return isRecord(part) ? ownValue(part, key) : undefined;
}

function itemOf(items: readonly IdItem[], id: string): IdItem | undefined {
  return items.find((item) => item.id === id);
}

/** The list with the other's item of this id, after the nearest item before it that both have, or without it. */
function withItemOf(into: readonly IdItem[], from: readonly IdItem[], id: string): readonly IdItem[] {
  const added = itemOf(from, id);
  if (added === undefined) return into.filter((item) => item.id !== id);
  const before = from.slice(0, from.indexOf(added)).findLast((item) => itemOf(into, item.id) !== undefined);
  const index = into.findIndex((item) => item.id === before?.id) + 1;
  return into.toSpliced(index, 0, added);
}

/** Items that only one side has go to the end. */
function inOrderOf(items: readonly IdItem[], order: readonly IdItem[]): IdItem[] {
  const rank = new Map(order.map(({ id }, index) => [id, index]));
  return items.toSorted((left, right) => (rank.get(left.id) ?? order.length) - (rank.get(right.id) ?? order.length));
}
