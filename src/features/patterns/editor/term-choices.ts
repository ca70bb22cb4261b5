import type { DraftPattern } from "@/engine/editing";
import type { Choice } from "./fields";

export type DraftTerm = DraftPattern["measurements"][number]["terms"][number];
export type DraftFlat = Exclude<DraftTerm, { readonly diagonal: unknown }>;
export type DraftSlant = Extract<DraftTerm, { readonly diagonal: unknown }>;
type TermKind = "count" | "length" | "allowance";

export const NEW_LINE: DraftFlat = { times: 1, count: "" };
export const NEW_SLANT: DraftSlant = { times: 1, diagonal: { across: [NEW_LINE], along: [NEW_LINE] } };

/** What a line uses, and its id there. */
export function takenBy(term: DraftFlat): { readonly kind: TermKind; readonly id: string } {
  if ("count" in term) return { kind: "count", id: term.count };
  return "length" in term ? { kind: "length", id: term.length } : { kind: "allowance", id: term.allowance };
}

/** The choice value for what a line uses; ids are unique only within their own list. */
export function choiceOf(term: DraftFlat): string {
  const { kind, id } = takenBy(term);
  return id === "" ? "" : `${kind} ${id}`;
}

/** The line with another item. */
export function withChoice({ times }: DraftFlat, choice: string): DraftFlat {
  const [kind, id = ""] = choice.split(" ");
  if (kind === "length") return { times, length: id };
  return kind === "allowance" ? { times, allowance: id } : { times, count: id };
}

interface Group {
  readonly group: string;
  readonly choices: readonly Choice[];
}

/** Everything a line can use, by kind; a removed item that it used stays visible. */
export function termChoices({ counts, lengths = [], allowances }: DraftPattern, term: DraftFlat): (Choice | Group)[] {
  const group = (name: string, kind: TermKind, items: readonly { readonly id: string; readonly label: string }[]) => ({
    group: name,
    choices: items.map(({ id, label }) => ({ value: `${kind} ${id}`, label: label || id })),
  });
  const groups = [
    group("Counts of stitches", "count", counts.filter(isOf("stitches"))),
    group("Counts of rows", "count", counts.filter(isOf("rows"))),
    group("Lengths", "length", lengths),
    group("Edgings and seams", "allowance", allowances),
  ];
  const value = choiceOf(term);
  const isGone = value !== "" && !groups.some(({ choices }) => choices.some((choice) => choice.value === value));
  return isGone ? [{ value, label: `${takenBy(term).id} (removed)` }, ...groups] : groups;
}

function isOf(direction: "stitches" | "rows") {
  return (count: DraftPattern["counts"][number]) => count.direction === direction;
}

/** Whether a line can be calculated as worn: it uses a count of a fabric that stretches, or was calculated so before. */
export function mayBeStretched({ counts, fabrics }: DraftPattern, term: DraftFlat): boolean {
  if (!("count" in term)) return false;
  const count = counts.find(({ id }) => id === term.count);
  return term.stretched === true || fabrics.some(({ id, wornStretch }) => id === count?.fabric && wornStretch);
}
