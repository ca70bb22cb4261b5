import "server-only";
import { LRUCache } from "lru-cache";
import { parseStoredPattern, type PatternDocument } from "@/engine/pattern";

/** A revision never changes, so what was read of one once is kept: to check a document costs as much as a small page. */
const read = new LRUCache<string, PatternDocument>({ max: 100 });

/** A revision's document where it was read before. */
export function knownPattern(revisionId: string): PatternDocument | undefined {
  return read.get(revisionId);
}

/** A revision's pattern, and the newest alone of many. */
export const newestDocument = {
  orderBy: { number: "desc" },
  take: 1,
  select: { id: true, document: true },
} as const;

/**
 * A revision's document as the database kept it, checked by the schema like any other input.
 *
 * @throws {Error} where it is none, which only a damaged database can bring about.
 */
export function storedPattern({ id, document }: { readonly id: string; readonly document: unknown }): PatternDocument {
  const known = read.get(id);
  if (known !== undefined) return known;
  const parsed = parseStoredPattern(document);
  if (!parsed.ok) throw new Error(`a stored pattern is damaged: ${parsed.faults.map(({ path }) => path).join(", ")}`);
  read.set(id, parsed.document);
  return parsed.document;
}
