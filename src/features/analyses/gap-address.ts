import type { GapQuery } from "./schema";

/** Addresses of the gap page: the one that is read now, with some of what it asks for changed. */
export function gapAddress(callId: string, query: GapQuery, changed: Partial<GapQuery> = {}): string {
  const { view, sort, show, cell } = { ...query, ...changed };
  const asked = new URLSearchParams();
  if (view === "table") asked.set("view", view);
  if (view === "table" && sort === "worst") asked.set("sort", sort);
  if (show !== undefined) asked.set("show", show);
  if (cell !== undefined) asked.set("cell", cell);
  const text = asked.toString();
  const anchor = changed.cell === undefined ? "" : `#at-${changed.cell}`;
  return `/calls/${callId}/gaps${text === "" ? "" : `?${text}`}${anchor}`;
}
