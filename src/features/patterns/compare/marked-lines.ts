import { diffArrays, diffWordsWithSpace } from "diff";

type Mark = "same" | "added" | "removed";

export interface MarkedPart {
  readonly mark: Mark;
  readonly text: string;
}

/** A line of a comparison of two texts. */
export type MarkedLine =
  | MarkedPart
  /** A line that is in both, with other words. */
  | { readonly mark: "changed"; readonly parts: readonly MarkedPart[] }
  /** Lines that are the same in both, far from any that are not. */
  | { readonly mark: "skipped"; readonly lines: number };

/** The work of comparing grows with the square of these. */
const MOST_LINE_EDITS = 1_000;
const MOST_WORD_EDITS = 200;
/** How many new lines an old one is compared with. */
const LOOK_AHEAD = 3;
/** The share of the longer line that must be the same for the two to count as one changed line. */
const LEAST_ALIKE = 0.4;
const LINES_AROUND = 2;

/**
 * The differences of two texts, line by line, and in a changed line word by word.
 *
 * @returns null where too much differs to compare line by line.
 */
export function markLines(was: string, becomes: string): MarkedLine[] | null {
  const parts = diffArrays(linesOf(was), linesOf(becomes), { maxEditLength: MOST_LINE_EDITS });
  if (parts === undefined) return null;
  const lines: MarkedLine[] = [];
  let removed: readonly string[] = [];
  for (const { value, added, removed: isRemoved } of parts) {
    if (isRemoved) {
      removed = value;
      continue;
    }
    lines.push(...rewritten(removed, added ? value : []));
    if (!added) lines.push(...value.map((text) => ({ mark: "same" as const, text })));
    removed = [];
  }
  return skipFar([...lines, ...rewritten(removed, [])]);
}

function linesOf(text: string): string[] {
  return text === "" ? [] : text.split(/\r?\n/);
}

/** Pairs replaced lines: each with the next similar one, where there is one. */
function rewritten(removed: readonly string[], added: readonly string[]): MarkedLine[] {
  const lines: MarkedLine[] = [];
  let next = 0;
  for (const was of removed) {
    const near = added.slice(next, next + LOOK_AHEAD).map((becomes) => wordParts(was, becomes));
    const index = near.findIndex((parts) => parts !== null);
    const parts = near[index];
    if (!parts) {
      lines.push({ mark: "removed", text: was });
      continue;
    }
    lines.push(...added.slice(next, next + index).map(addedLine), { mark: "changed", parts });
    next += index + 1;
  }
  return [...lines, ...added.slice(next).map(addedLine)];
}

function addedLine(text: string): MarkedLine {
  return { mark: "added", text };
}

/** Null where the two have too little in common to be read as one line. */
function wordParts(was: string, becomes: string): MarkedPart[] | null {
  const parts = diffWordsWithSpace(was, becomes, { maxEditLength: MOST_WORD_EDITS });
  if (parts === undefined) return null;
  const marked = parts.map(({ value, added, removed }) => ({
    mark: added ? ("added" as const) : removed ? ("removed" as const) : ("same" as const),
    text: value,
  }));
  const alike = marked.reduce((sum, { mark, text }) => sum + (mark === "same" ? text.length : 0), 0);
  return alike >= LEAST_ALIKE * Math.max(was.length, becomes.length) ? marked : null;
}

/** Leaves out unchanged lines that are far from any change. */
function skipFar(lines: readonly MarkedLine[]): MarkedLine[] {
  const isNear = lines.map(() => false);
  lines.forEach(({ mark }, index) => {
    if (mark !== "same") isNear.fill(true, Math.max(0, index - LINES_AROUND), index + LINES_AROUND + 1);
  });
  const shown: MarkedLine[] = [];
  lines.forEach((line, index) => {
    const last = shown.at(-1);
    if (isNear[index]) shown.push(line);
    else if (last?.mark === "skipped") shown[shown.length - 1] = { mark: "skipped", lines: last.lines + 1 };
    else shown.push({ mark: "skipped", lines: 1 });
  });
  return shown;
}
