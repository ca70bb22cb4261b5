import { z } from "zod";
import { pieceFaults1 } from "./piece-faults-1";
import { patternDocumentSchema, PATTERN_FORMAT, type PatternDocument } from "./pattern-document";
import { patternDocument1Schema, PATTERN_FORMAT_1 } from "./pattern-document-1";
import { upgradePattern } from "./upgrade-pattern";

const upgradedSchema = patternDocument1Schema.transform((pattern, context): PatternDocument => {
  for (const { path, says } of pieceFaults1(pattern))
    context.addIssue({ code: "custom", path: [...path], message: says });
  return upgradePattern(pattern);
});

/**
 * Schema of a pattern in JSON, of format 2 or of format 1, which is brought up to format 2; other references than those of
 * format 1's pieces are checked by `patternFaults`.
 */
export const patternSchema = z.discriminatedUnion("format", [upgradedSchema, patternDocumentSchema], {
  error: ({ code }) => (code === "invalid_union" ? `must be "${PATTERN_FORMAT_1}" or "${PATTERN_FORMAT}".` : undefined),
});
