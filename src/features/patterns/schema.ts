import { z } from "zod";
import { patternDraftSchema, type PatternDraft } from "@/engine/editing";
import type { Fault } from "@/engine/pattern";

/** A place of the written instructions as stored. */
export const placeSchema = z.strictObject({ block: z.int().min(0), hash: z.string(), words: z.string() });

const LONGEST_TYPED = 200;
const MOST_TYPED = 6_000;

/** Texts as typed, by the path of the document's number that they stand for: `grading.body-stitches.m` -> `78`. */
export const typedSchema = z
  .record(z.string().max(LONGEST_TYPED), z.string().max(LONGEST_TYPED))
  .refine((typed) => Object.keys(typed).length <= MOST_TYPED, {
    error: "These are more edits than a pattern has numbers.",
  });

export type Typed = Readonly<Record<string, string>>;

/** A pattern being edited as stored: an empty object where nothing is edited. */
export const storedDraftSchema = z.union([z.strictObject({}).transform(() => null), patternDraftSchema]);

export const draftEditsSchema = z.object({
  content: patternDraftSchema.nullable(),
  version: z.int().min(0),
  baseNumber: z.int().min(1),
  unanswered: patternDraftSchema.nullable().optional(),
});

export interface DraftEdits {
  /** Null where nothing is edited any more. */
  readonly content: PatternDraft | null;
  /** The version that was read; 0 where there was no draft. */
  readonly version: number;
  /** The revision that the edits are made on: it must be the newest. */
  readonly baseNumber: number;
  /** What was sent over the same version before and not answered, because the page was left: these edits go on from it. */
  readonly unanswered?: PatternDraft | null | undefined;
}

export const reasonSchema = z
  .string()
  .trim()
  .min(1, { error: "Enter what you changed and why, in a few words." })
  .max(1_000, { error: "Keep the reason under 1,000 characters." });

/** The largest document that can be imported, bytes. */
export const LARGEST_DOCUMENT_BYTES = 20 * 1_000_000;

/** The result of importing a document. */
export type BroughtIn =
  | { readonly status: "stored"; readonly href: string; readonly warnings: readonly Fault[] }
  | { readonly status: "faults"; readonly faults: readonly Fault[] }
  | { readonly status: "title"; readonly says: string };

const CORRECTED = /^(grading\.[^.]+\.[^.]+|(allowances|lengths)\.[^.]+\.cm(\.[^.]+)?)$/;

const STARTS_WITH_NUMBER = /^\s*[\d.,]/;

/** Name of the field that says beside an allowance's number whether it `adds` or `takes`. */
export function wayField(path: string): string {
  return `way.${path}`;
}

/**
 * The numbers among a form's or an address's entries: those under the path of a count, an allowance or a length. What an
 * allowance takes by the word beside it gets its minus.
 */
export function correctedNumbers(entries: Iterable<readonly [string, unknown]>): Typed {
  const given = new Map(entries);
  return Object.fromEntries(
    [...given].flatMap(([path, text]) => {
      if (!CORRECTED.test(path) || typeof text !== "string") return [];
      const takes = given.get(wayField(path)) === "takes" && STARTS_WITH_NUMBER.test(text);
      return [[path, takes ? `-${text.trim()}` : text]];
    }),
  );
}
