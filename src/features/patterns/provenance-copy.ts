import type { BodyTable, Mark } from "@/engine/trade-tables";

const MARK_WORDS: Readonly<Record<Mark, string>> = {
  read: "Read in the published table",
  secondary: "From a secondary source that works by it",
  memory: "An example range: check it against your own table before you use it",
};

/** How far a table's figures can be trusted, in a line. */
export function provenanceWords({ mark, rows }: BodyTable): string {
  const others = new Set(rows.flatMap(({ marks = {} }) => Object.values(marks)));
  return `${MARK_WORDS[mark]}${others.size > 0 ? "; in part borne out by a secondary source" : ""}.`;
}
