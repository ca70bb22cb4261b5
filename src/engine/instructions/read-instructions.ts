import { placeOf, type Place } from "./place";

export type BlockKind = "heading" | "paragraph" | "item";

/** A part of the written instructions. `lead + text + tail` of all blocks in their order are the whole text. */
export interface InstructionBlock {
  readonly kind: BlockKind;
  /** What is read; the lines of a paragraph stay lines. */
  readonly text: string;
  /** What stands before it and is drawn otherwise: `# `, `- `, blank lines at the beginning. */
  readonly lead: string;
  /** Spaces and line ends behind it. */
  readonly tail: string;
  /** Where it stands, so that a question can be pinned to it. */
  readonly place: Place;
}

const HEADING_MARK = /^\s*#{1,6}[ \t]+/;
const ITEM_MARK = /^\s*(?:[-*•–—]|\d{1,3}[.)])[ \t]+/;
const ROW = /^\s*(?:next |set-?up |every |all )?(?:rows?|rnds?|rounds?)\b[^:\n]{0,40}:[ \t]*\S/i;
const MAX_HEADING_LENGTH = 80;

/**
 * A designer's plain text in blocks, by what is customary in plain text.
 *
 * A blank line ends a block. A short line that begins a block is a heading where it begins with `#`, ends with a colon or is
 * in capitals without digits. A line that begins with a dash, a dot or a number, or with `Row 3:`, is an item of its own.
 *
 * @param text any text.
 * @returns blocks from which every character of the text can be put together again; none for a blank text.
 */
export function readInstructions(text: string): InstructionBlock[] {
  const drafts: Draft[] = [];
  let lead = "";
  let isNew = true;
  for (const line of text.split(/(?<=\n)/)) {
    const last = drafts.at(-1);
    if (line.trim() === "") {
      if (last) last.source += line;
      else lead += line;
      isNew = true;
      continue;
    }
    const kind = kindOf(line, isNew);
    if (last && kind === "paragraph" && !isNew) last.source += line;
    else {
      drafts.push({ kind, source: lead + line });
      lead = "";
    }
    isNew = kind === "heading";
  }
  return drafts.map((draft, number) => finish(draft, number));
}

interface Draft {
  readonly kind: BlockKind;
  source: string;
}

function kindOf(line: string, isNew: boolean): BlockKind {
  if (HEADING_MARK.test(line)) return "heading";
  if (ITEM_MARK.test(line) || ROW.test(line)) return "item";
  const trimmed = line.trim();
  if (!isNew || trimmed.length > MAX_HEADING_LENGTH) return "paragraph";
  const isCapitals = /\p{Lu}{3}/u.test(trimmed) && !/[\p{Ll}\d]/u.test(trimmed);
  return trimmed.endsWith(":") || isCapitals ? "heading" : "paragraph";
}

function finish({ kind, source }: Draft, number: number): InstructionBlock {
  const mark = kind === "heading" ? HEADING_MARK : ITEM_MARK;
  const found = kind === "paragraph" ? undefined : mark.exec(source)?.[0];
  const lead = found ?? /^\s*/.exec(source)?.[0] ?? "";
  const behind = source.slice(lead.length);
  const text = behind.trimEnd();
  return { kind, lead, text, tail: behind.slice(text.length), place: placeOf(text, number) };
}
