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

type Says = ReadonlyMap<string, readonly string[]>;

/** The result of reading a draft: what can be read, and messages about it. */
export interface DraftReading {
  /** The draft as a document; null while something in it cannot be read. */
  readonly document: PatternDocument | null;
  /** The readable part, for calculations; null where there is none. */
  readonly readable: PatternDocument | null;
  /** The draft's changes to the revision; unreadable values are as typed. */
  readonly changes: readonly PatternChange[];
  /** What is wrong, by path in the draft, as `counts[2].repeat.of`. */
  readonly faults: Says;
  /** Rules that numbers break, by path; they can still be saved. */
  readonly warnings: Says;
  /** Messages about numbers whose sum is wrong, by `count.size`. */
  readonly sums: ReadonlyMap<string, string>;
  /** Unusual numbers, by path as in `editFields`. */
  readonly questions: ReadonlyMap<string, DraftQuestion>;
}

/**
 * Reads a draft.
 *
 * @param base the revision that is being edited.
 * @param before the last reading: unchanged messages stay the same object, so that components showing them are not drawn again.
 */
export function readWholeDraft(
  base: PatternDocument,
  { pattern, unit, meant }: PatternDraft,
  before?: DraftReading,
): DraftReading {
  const { document, faults } = readDraft(pattern, unit);
  const readable = document ?? readablePart(pattern, unit);
  // Indexes differ where something is left out.
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

/** The entries, reusing equal ones from before. */
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
