import type { GapQuery } from "../schema";

/** A cell as addresses name it: `m.bust`, the size first. Ids contain no dot. */
export function cellKey(size: string, measurement: string): string {
  return `${size}.${measurement}`;
}

/** The query of the Differences page as it is now, with some of it changed. */
export function gapSearch(query: GapQuery, changed: Partial<GapQuery> = {}): string {
  const { view, sort, show, cell, page, testers } = { ...query, testers: 1, ...changed };
  const asked = new URLSearchParams();
  if (view === "table") asked.set("view", view);
  if (view === "table" && sort === "worst") asked.set("sort", sort);
  if (show !== undefined) asked.set("show", show);
  if (page > 1) asked.set("page", String(page));
  if (cell !== undefined) asked.set("cell", cell);
  if (cell !== undefined && testers > 1) asked.set("testers", String(testers));
  const text = asked.toString();
  return text === "" ? "" : `?${text}`;
}

/** Addresses of the Differences page; see `gapSearch`. */
export function gapAddress(callId: string, query: GapQuery, changed: Partial<GapQuery> = {}): string {
  return `/calls/${callId}/differences${gapSearch(query, changed)}`;
}

/** Address of a link on the Differences page that opens a cell. */
export function openCell(search: string, cell: string): string {
  return `${search}${search === "" ? "?" : "&"}cell=${cell}#at-${cell}`;
}
