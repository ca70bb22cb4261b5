import { oneForAllSizes, spreadOverSizes, type DraftPattern, type Typed } from "@/engine/editing";
import { uniqueSlug } from "@/engine/tables";
import { replaceItem } from "./list-items";

/** The two lists of lengths besides the counts. */
export type CmList = "lengths" | "allowances";

export type CmItem = DraftPattern["allowances"][number];

export function cmItems(pattern: DraftPattern, list: CmList): readonly CmItem[] {
  return pattern[list] ?? [];
}

export function withCmItems(pattern: DraftPattern, list: CmList, items: readonly CmItem[]): DraftPattern {
  if (list === "allowances" || items.length > 0) return { ...pattern, [list]: items };
  const { lengths: _none, ...rest } = pattern;
  return rest;
}

export function withNewCm(pattern: DraftPattern, list: CmList, label: string): DraftPattern {
  const items = cmItems(pattern, list);
  const id = uniqueSlug(label, new Set(items.map((item) => item.id)));
  return withCmItems(pattern, list, [...items, { id, label, cm: "" }]);
}

/** The item with a number in each size, or with one for all. */
export function withScope(pattern: DraftPattern, item: CmItem, isBySize: boolean): CmItem {
  return { ...item, cm: isBySize ? spreadOverSizes(pattern, item.cm) : oneForAllSizes(pattern, item.cm) };
}

/** The item with a number typed: for all sizes where none is named. */
export function withCm(item: CmItem, size: string | null, typed: Typed): CmItem {
  if (size === null || typeof item.cm !== "object") return { ...item, cm: typed };
  return { ...item, cm: { ...item.cm, [size]: typed } };
}

/**
 * Cells copied from a spreadsheet, items down and sizes across, pasted from a cell on; cells outside are ignored. An item with one number for all sizes gets one per size where several are pasted side by side.
 */
export function withPastedCm(
  pattern: DraftPattern,
  list: CmList,
  {
    block,
    row,
    column,
  }: { readonly block: readonly (readonly string[])[]; readonly row: number; readonly column: number },
): DraftPattern {
  const items = block.reduce<readonly CmItem[]>(
    (now, texts, down) => {
      const item = now[row + down];
      if (item === undefined) return now;
      const grown = texts.length > 1 ? withScope(pattern, item, true) : item;
      const filled = texts.reduce((each, text, across) => {
        const size = pattern.sizes[column + across];
        return size === undefined ? each : withCm(each, size.id, text.trim());
      }, grown);
      return replaceItem(now, row + down, filled);
    },
    cmItems(pattern, list),
  );
  return withCmItems(pattern, list, items);
}
