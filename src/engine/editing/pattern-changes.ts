import { isSameJson, ownValue } from "../pattern";
import type { DraftPattern } from "./draft-pattern";
import { describePath, type PatternChange } from "./describe-path";
import { isIdList, isRecord, ORDER, type IdItem } from "./document-path";
import { stepWords } from "./step-words";

/**
 * The changes from one pattern to a later one, with descriptions; both may be drafts.
 *
 * @returns changes in the later document's order of parts; parts with ids are matched by id.
 */
export function patternChanges(before: DraftPattern, after: DraftPattern): PatternChange[] {
  const changes: PatternChange[] = [];
  const labels = { before, after };
  walk({ before, after, path: [] });
  return changes;

  function walk({ before: was, after: becomes, path }: Pair): void {
    if (isSameJson(was ?? null, becomes ?? null)) return;
    const children = childPairs({ before: was, after: becomes, path }, after);
    if (children === null)
      changes.push({ path: path.join("."), ...describePath(labels, path), ...leafAt(labels, path, { was, becomes }) });
    else children.forEach(walk);
  }
}

interface Pair {
  readonly before: unknown;
  readonly after: unknown;
  readonly path: readonly string[];
}

const MAX_SHOWN_LENGTH = 200;

/** A step is told in words. */
function leafAt(
  { before, after }: { readonly before: DraftPattern; readonly after: DraftPattern },
  path: readonly string[],
  { was, becomes }: { readonly was: unknown; readonly becomes: unknown },
): Pick<PatternChange, "was" | "becomes"> {
  const [, , id = ""] = path;
  return isStep(path) && id !== ORDER ? leaf(stepWords(before, id), stepWords(after, id)) : leaf(was, becomes);
}

function isStep(path: readonly string[]): boolean {
  return path.length === 3 && path[0] === "garment" && path[1] === "steps";
}

function leaf(before: unknown, after: unknown): Pick<PatternChange, "was" | "becomes"> {
  const shown = { was: shownLeaf(before), becomes: shownLeaf(after) };
  return shown.was === undefined || shown.becomes === undefined
    ? { was: null, becomes: null }
    : { was: shown.was, becomes: shown.becomes };
}

/** Undefined if it is too large to show. */
function shownLeaf(value: unknown): number | string | null | undefined {
  if (value === undefined || value === null) return null;
  if (typeof value === "number") return value;
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value === "string") return value.length > MAX_SHOWN_LENGTH ? undefined : value;
  const label = isRecord(value) ? ownValue(value, "label") : undefined;
  return typeof label === "string" ? label : undefined;
}

/** The parts of a pair to compare separately; null if the pair is compared as a whole. */
function childPairs({ before, after, path }: Pair, { sizes }: DraftPattern): Pair[] | null {
  if (isStep(path)) return null;
  const items = { before: before ?? [], after: after ?? [] };
  if (isIdList(items.before) && isIdList(items.after)) return itemPairs(items.before, items.after, path);
  if (isNewLength(before, path) && isRecord(after)) {
    return [{ before: undefined, after: after["cm"], path: [...path, "cm"] }];
  }
  if (isByGrade(path) && (isRecord(before) || isRecord(after))) {
    const expanded = (value: unknown) =>
      typeof value === "number" || typeof value === "string"
        ? Object.fromEntries(sizes.map(({ id }) => [id, value]))
        : value;
    return memberPairs({ before: expanded(before), after: expanded(after), path }, sizes);
  }
  const isPart = path.length < 2 || path[0] === "grading" || (isRecord(before) && isRecord(after));
  return isPart && (isRecord(before) || isRecord(after)) ? memberPairs({ before, after, path }, sizes) : null;
}

/** A new allowance or length: what it adds is more informative than its name. */
function isNewLength(before: unknown, path: readonly string[]): boolean {
  return before === undefined && path.length === 2 && (path[0] === "allowances" || path[0] === "lengths");
}

/** A length that may be one number or one by size. */
function isByGrade(path: readonly string[]): boolean {
  const key = path.at(-1);
  return (path.length === 3 && key === "cm") || key === "easeCm";
}

/** Members by size are in the order of the sizes, whatever order a record was stored in. */
function memberPairs({ before, after, path }: Pair, sizes: DraftPattern["sizes"]): Pair[] {
  const was = isRecord(before) ? before : {};
  const becomes = isRecord(after) ? after : {};
  const keys = [...new Set([...Object.keys(becomes), ...Object.keys(was)])];
  const rank = new Map(sizes.map(({ id }, index) => [id, index]));
  const inOrder = keys.toSorted((left, right) => (rank.get(left) ?? 0) - (rank.get(right) ?? 0));
  return inOrder.map((key) => ({ before: ownValue(was, key), after: ownValue(becomes, key), path: [...path, key] }));
}

function itemPairs(before: readonly IdItem[], after: readonly IdItem[], path: readonly string[]): Pair[] {
  const was = new Map(before.map((item) => [item.id, item]));
  const becomes = new Map(after.map((item) => [item.id, item]));
  const ids = [...new Set([...becomes.keys(), ...was.keys()])];
  const common = (items: readonly IdItem[]) => items.map(({ id }) => id).filter((id) => was.has(id) && becomes.has(id));
  const order: Pair = { before: common(before), after: common(after), path: [...path, ORDER] };
  return [...ids.map((id) => ({ before: was.get(id), after: becomes.get(id), path: [...path, id] })), order];
}
