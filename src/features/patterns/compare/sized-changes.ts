import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { sizedNumbers, sizedWords, type SizedPart } from "./sized-numbers";

/** Both sides of a number as words, null where there is none. */
export interface Sides {
  readonly was: string | null;
  readonly becomes: string | null;
}

export interface SizedChange {
  readonly key: string;
  readonly label: string;
  /** One for each of `comparedSizes`, or a single one that stands for all of them. */
  readonly sides: readonly Sides[];
}

/** The sizes of both patterns: the later one's, then those that it no longer has. */
export function comparedSizes(
  before: PatternDocument,
  after: PatternDocument,
): { readonly key: string; readonly label: string }[] {
  const kept = new Set(after.sizes.map(({ id }) => id));
  return [
    ...after.sizes.map(({ id, label }) => ({ key: id, label })),
    ...before.sizes
      .filter(({ id }) => !kept.has(id))
      .map(({ id, label }) => ({ key: id, label: `${label} (removed)` })),
  ];
}

/** The numbers of one part that changed in any size, each through all sizes. */
export function sizedChanges(
  before: PatternDocument,
  after: PatternDocument,
  { part, unit }: { readonly part: SizedPart; readonly unit: LengthUnit },
): SizedChange[] {
  const olds = new Map(sizedNumbers(before)[part].map((number) => [number.key, number]));
  const news = new Map(sizedNumbers(after)[part].map((number) => [number.key, number]));
  const sizes = comparedSizes(before, after);
  return [...new Set([...news.keys(), ...olds.keys()])].flatMap((key) => {
    const [was, becomes] = [olds.get(key), news.get(key)];
    const named = becomes ?? was;
    if (named === undefined) return [];
    const words = (value: number | undefined) => (value === undefined ? null : sizedWords(value, named.reading, unit));
    const isBySize = [was, becomes].some((number) => number !== undefined && number.one === undefined);
    const values = isBySize
      ? sizes.map((size) => ({ was: was?.valueOf(size.key), becomes: becomes?.valueOf(size.key) }))
      : [{ was: was?.one, becomes: becomes?.one }];
    if (values.every((value) => value.was === value.becomes)) return [];
    return [
      {
        key,
        label: named.label,
        sides: values.map((value) => ({ was: words(value.was), becomes: words(value.becomes) })),
      },
    ];
  });
}
