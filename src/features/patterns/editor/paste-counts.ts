import type { DraftPattern } from "@/engine/editing";
import { uniqueSlug } from "@/engine/tables";

/** The pattern with one more count at the end, in its first fabric. */
export function withNewCount(pattern: DraftPattern, label: string, direction: "stitches" | "rows"): DraftPattern {
  const id = uniqueSlug(label === "" ? direction : label, new Set(pattern.counts.map((count) => count.id)));
  const fabric = pattern.fabrics[0]?.id ?? "";
  return { ...pattern, counts: [...pattern.counts, { id, label, fabric, direction }] };
}

type DraftCount = DraftPattern["counts"][number];

/** Columns of the list of counts that accept pasted cells. */
const COLUMNS: readonly ((count: DraftCount, text: string) => DraftCount)[] = [
  (count, label) => ({ ...count, label }),
  (count, of) => withWholeRule(withRepeatOf(count, of), of),
  (count, plus) => ({ ...count, repeat: { of: count.repeat?.of ?? "", plus } }),
  withLeast,
];

/** Cells copied from a spreadsheet, pasted from a cell of the list on; rows beyond its end become counts of stitches. */
export function withPastedCounts(
  pattern: DraftPattern,
  block: readonly (readonly string[])[],
  { row, column }: { readonly row: number; readonly column: number },
): DraftPattern {
  return block.reduce((now, texts, down) => {
    const isNew = now.counts[row + down] === undefined;
    const grown = isNew ? withNewCount(now, column === 0 ? (texts[0]?.trim() ?? "") : "", "stitches") : now;
    const counts = grown.counts.map((count, index) =>
      index === row + down
        ? texts.reduce((each, text, across) => COLUMNS[column + across]?.(each, text.trim()) ?? each, count)
        : count,
    );
    return { ...grown, counts };
  }, pattern);
}

/** The count with another multiple; without a rule where nothing is typed. */
export function withRepeatOf(count: DraftCount, of: string): DraftCount {
  const { repeat, ...rest } = count;
  return of.trim() === "" ? rest : { ...rest, repeat: { of, plus: repeat?.plus ?? 0 } };
}

/** As charts write it: `8 + 3`, `8 plus 3`, `multiple of 8 sts + 3`, `8n + 3`. */
const WHOLE_RULE =
  /^\s*(?:multiple of\s*)?(\d+)\s*(?:n|sts|stitches|rows)?\s*(?:\+|plus)\s*(\d+)\s*(?:sts|stitches|rows)?\s*$/i;

/** The count with both parts of a multiple that was typed into one field; the same count where only one was typed. */
export function withWholeRule(count: DraftCount, text: string): DraftCount {
  const [, of, plus] = WHOLE_RULE.exec(text) ?? [];
  return of === undefined || plus === undefined ? count : { ...count, repeat: { of, plus } };
}

export function withLeast(count: DraftCount, least: string): DraftCount {
  const { least: _before, ...rest } = count;
  return least.trim() === "" ? rest : { ...rest, least };
}
