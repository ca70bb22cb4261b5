import { ownValue, type CmBySize, type Count, type Fabric, type PatternDocument, type WorkedLength } from "../pattern";
import type { Growth } from "./gauge";

/** A pattern's parts by id, made once for any number of predictions. */
export interface PatternIndex {
  readonly pattern: PatternDocument;
  readonly fabrics: ReadonlyMap<string, Fabric>;
  readonly counts: ReadonlyMap<string, Count>;
  readonly lengths: ReadonlyMap<string, WorkedLength>;
  readonly allowances: ReadonlyMap<string, CmBySize>;
  /** Of testers who did not count their swatch before blocking, by fabric; empty where no call says. */
  readonly growths: ReadonlyMap<string, Growth>;
}

/** @param growths of a call. @returns the index of a parsed pattern. */
export function indexPattern(pattern: PatternDocument, growths: PatternIndex["growths"] = new Map()): PatternIndex {
  return {
    pattern,
    fabrics: new Map(pattern.fabrics.map((fabric) => [fabric.id, fabric])),
    counts: new Map(pattern.counts.map((count) => [count.id, count])),
    lengths: new Map((pattern.lengths ?? []).map((length) => [length.id, length])),
    allowances: new Map(pattern.allowances.map(({ id, cm }) => [id, cm])),
    growths,
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
