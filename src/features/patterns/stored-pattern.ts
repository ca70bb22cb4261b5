import { parsePattern, type PatternDocument } from "@/engine/pattern";

/**
 * A pattern document as the database kept it, read by the schema like any other input.
 *
 * @throws {Error} where it is none, which only a damaged database can bring about.
 */
export function storedPattern(document: unknown): PatternDocument {
  const parsed = parsePattern(document);
  if (!parsed.ok) throw new Error(`a stored pattern is damaged: ${parsed.faults.map(({ path }) => path).join(", ")}`);
  return parsed.document;
}
