import { patternFaults, patternRangeFaults, schemaFaults, type Fault, type PatternDocument } from "../pattern";
import type { LengthUnit } from "../units";
import type { DraftPattern } from "./draft-pattern";
import { readingSchema } from "./read-draft";

/** Lists whose items can be left out one by one. */
const LISTS = new Set([
  "bodyMeasurements",
  "fabrics",
  "sizes",
  "counts",
  "ties",
  "lengths",
  "allowances",
  "measurements",
  "yarns",
]);
/** Optional members of an item, which can be left out on their own. */
const OPTIONAL_KEYS = new Set(["repeat", "least", "locked", "target", "on", "growth"]);
/** Leaving out a part may make others invalid, which are then left out too; no known chain is longer than this. */
const MAX_ROUNDS = 8;

type Path = readonly (string | number)[];

/**
 * The valid part of a draft: faulty parts are left out, and those that depend on them.
 *
 * @returns a document whose grading may lack numbers; null if no size or no fabric is left.
 */
export function readablePart(draft: DraftPattern, unit: LengthUnit): PatternDocument | null {
  let rest: unknown = draft;
  for (let round = 0; round < MAX_ROUNDS; round += 1) {
    const parsed = readingSchema(unit).safeParse(rest);
    const faults = parsed.success ? documentFaults(parsed.data) : schemaFaults(parsed.error.issues);
    if (parsed.success && faults.length === 0) return parsed.data;
    const paths = faults.map(({ path }) => smallestRemovable(rest, pathOf(path)));
    if (paths.some((path) => path === undefined)) return null;
    rest = paths
      .flatMap((path) => (path === undefined ? [] : [path]))
      .toSorted(laterFirst)
      .reduce(withoutPath, rest);
  }
  return null;
}

function documentFaults(pattern: PatternDocument): Fault[] {
  return [...patternFaults(pattern), ...patternRangeFaults(pattern)].filter(
    ({ path }) => !isMissingNumber(pattern, pathOf(path)),
  );
}

/** A missing number in one size does not affect the other sizes of a count. */
function isMissingNumber(pattern: PatternDocument, path: Path): boolean {
  const [list, , size] = path;
  return list === "grading" && size !== undefined && valueAt(pattern, path) === undefined;
}

/** The smallest part whose removal removes a fault. */
function smallestRemovable(pattern: unknown, fault: Path): Path | undefined {
  for (let length = fault.length; length > 0; length -= 1) {
    const path = fault.slice(0, length);
    if (canLeaveOut(path) && valueAt(pattern, path) !== undefined) return path;
  }
  return undefined;
}

function canLeaveOut(path: Path): boolean {
  const last = path.at(-1);
  const above = path.at(-2);
  if (path[0] === "garment") return canLeaveOutOfGarment(path);
  if (typeof last === "number") return path.length === 2 && typeof above === "string" && LISTS.has(above);
  if (path[0] === "grading") return path.length > 1;
  return path.length === 3 ? OPTIONAL_KEYS.has(String(last)) : isBySize(path);
}

/** A piece, a step or a seam; an edge of a piece, and a shaping of a step. */
function canLeaveOutOfGarment(path: Path): boolean {
  const [, , , list] = path;
  if (typeof path.at(-1) === "number")
    return path.length === 3 || (path.length === 5 && (list === "edges" || list === "shape"));
  return path.length === 4 && list === "shaping";
}

/** A number of one size, or a body measurement of one size. */
function isBySize(path: Path): boolean {
  const above = path.at(-2);
  return path.length >= 4 && (above === "cm" || above === "easeCm" || above === "body" || above === "locked");
}

function pathOf(text: string): Path {
  return [...text.matchAll(/\[(\d+)\]|([^.[\]]+)/g)].map(([, index, key = ""]) =>
    index === undefined ? key : Number(index),
  );
}

function valueAt(value: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (at, key) =>
      typeof at === "object" && at !== null && Object.hasOwn(at, key)
        ? new Map(Object.entries(at)).get(String(key))
        : undefined,
    value,
  );
}

/** Later items of a list are removed first, so that the indices of the others stay valid. */
function laterFirst(left: Path, right: Path): number {
  for (let index = 0; index < Math.min(left.length, right.length); index += 1) {
    const [one, other] = [left[index], right[index]];
    if (typeof one === "number" && typeof other === "number" && one !== other) return other - one;
  }
  return right.length - left.length;
}

function withoutPath(value: unknown, path: Path): unknown {
  const [key, ...rest] = path;
  if (typeof value !== "object" || value === null || key === undefined || !Object.hasOwn(value, key)) return value;
  if (Array.isArray(value)) {
    const items: readonly unknown[] = value;
    return rest.length === 0
      ? items.filter((_, index) => index !== key)
      : items.map((item, index) => (index === key ? withoutPath(item, rest) : item));
  }
  const entries = Object.entries(value).flatMap(([name, member]): [string, unknown][] => {
    if (name !== key) return [[name, member]];
    return rest.length === 0 ? [] : [[name, withoutPath(member, rest)]];
  });
  return Object.fromEntries(entries);
}
