import {
  draftQuestions,
  patternChanges,
  readablePart,
  readDraft,
  type DraftQuestion,
  type PatternChange,
  type PatternDraft,
} from "@/engine/editing";
import { brokenTies, gradingWarnings, type PatternDocument } from "@/engine/pattern";

export type Says = ReadonlyMap<string, readonly string[]>;

/** What follows from a draft: what can be read of it, and what is to be said of that. */
export interface DraftReading {
  /** The document that the draft stands for, null while something in it cannot be read. */
  readonly document: PatternDocument | null;
  /** What can be calculated with: without what cannot be read. Null where nothing can. */
  readonly readable: PatternDocument | null;
  /** What the draft changes in the revision; what cannot be read is as typed. */
  readonly changes: readonly PatternChange[];
  /** What is wrong, by path in the draft, as `counts[2].repeat.of`. */
  readonly faults: Says;
  /** Rules that numbers break, by path; they can be saved so. */
  readonly warnings: Says;
  /** What is said of a number whose sum does not come out, as `count.size`. */
  readonly sums: ReadonlyMap<string, string>;
  /** Odd numbers, by path as in `editFields`. */
  readonly questions: ReadonlyMap<string, DraftQuestion>;
}

/**
 * Reads a draft.
 *
 * @param base the revision that is being edited.
 * @param before the last reading: what is said as before stays the same object, so that nobody who shows it draws anew.
 */
export function readWholeDraft(
  base: PatternDocument,
  { pattern, unit, meant }: PatternDraft,
  before?: DraftReading,
): DraftReading {
  const { document, faults } = readDraft(pattern, unit);
  const readable = document ?? readablePart(pattern, unit);
  // Places in lists differ where something is left out.
  const warnings = gradingWarnings(readable ?? base).filter(
    ({ path }) => document !== null || (readable !== null && path.startsWith("grading.")),
  );
  const questions = readable === null ? [] : draftQuestions(base, readable, meant);
  return {
    document,
    readable,
    changes: patternChanges(base, document ?? pattern),
    faults: unchanged(byPath(faults), before?.faults),
    warnings: unchanged(byPath(warnings), before?.warnings),
    sums: readable === null ? new Map() : brokenSums(readable),
    questions: unchanged(new Map(questions.map((question) => [question.path, question])), before?.questions),
  };
}

function byPath(faults: readonly { readonly path: string; readonly says: string }[]): Map<string, readonly string[]> {
  const says = new Map<string, string[]>();
  for (const fault of faults) says.set(fault.path, [...(says.get(fault.path) ?? []), fault.says]);
  return says;
}

function brokenSums(pattern: PatternDocument): Map<string, string> {
  const said = new Map<string, string>();
  for (const { tie, size, left, right } of brokenTies(pattern)) {
    const named = pattern.ties[tie];
    if (named === undefined) continue;
    for (const id of [named.count, ...named.equals.map(({ count }) => count)])
      said.set(`${id}.${size.id}`, `${left} and ${right} must meet.`);
  }
  return said;
}

/** The entries, those of before wherever they are equal. */
function unchanged<Entry>(
  entries: Map<string, Entry>,
  before: ReadonlyMap<string, Entry> | undefined,
): ReadonlyMap<string, Entry> {
  for (const [path, entry] of entries) {
    const was = before?.get(path);
    if (was !== undefined && JSON.stringify(was) === JSON.stringify(entry)) entries.set(path, was);
  }
  return entries;
}
