import type { Count, Fabric, PatternDocument } from "../pattern";
import { ownValue, type CmBySize } from "../pattern";

/** A pattern's parts by id, made once for any number of predictions. */
export interface PatternIndex {
  readonly pattern: PatternDocument;
  readonly fabrics: ReadonlyMap<string, Fabric>;
  readonly counts: ReadonlyMap<string, Count>;
  readonly lengths: ReadonlyMap<string, CmBySize>;
  readonly allowances: ReadonlyMap<string, CmBySize>;
}

/** @returns the index of a parsed pattern. */
export function indexPattern(pattern: PatternDocument): PatternIndex {
  return {
    pattern,
    fabrics: new Map(pattern.fabrics.map((fabric) => [fabric.id, fabric])),
    counts: new Map(pattern.counts.map((count) => [count.id, count])),
    lengths: new Map((pattern.lengths ?? []).map(({ id, cm }) => [id, cm])),
    allowances: new Map(pattern.allowances.map(({ id, cm }) => [id, cm])),
  };
}

/** Part of that id. @throws {RangeError} where there is none, which a parsed document rules out. */
export function part<Part>(parts: ReadonlyMap<string, Part>, id: string): Part {
  const found = parts.get(id);
  if (found === undefined) throw new RangeError(`unknown id ${id}`);
  return found;
}

/** Graded value of a count in a size, undefined where the grading does not hold it. */
export function gradedValue({ pattern }: PatternIndex, count: string, size: string): number | undefined {
  return ownValue(ownValue(pattern.grading, count), size);
}
