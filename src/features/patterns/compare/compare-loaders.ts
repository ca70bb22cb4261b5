import "server-only";
import { patternAccess } from "../access";
import { chooseRevisions } from "./choose-revisions";
import { listRevisions, type Revision } from "../data";
import { loadPattern, type PatternPage } from "../loaders";

export interface ComparePage extends PatternPage {
  /** All there are, the newest first. */
  readonly revisions: readonly Revision[];
  readonly from: Revision | null;
  readonly to: Revision | null;
  /** Why there is nothing to compare; null where there is. */
  readonly says: string | null;
}

/** The two requested revisions of a pattern. */
export async function loadComparison(
  patternId: string,
  asked: { readonly from?: string; readonly to?: string },
): Promise<ComparePage> {
  const page = await loadPattern(patternId);
  const revisions = await listRevisions(await patternAccess(page.viewer, patternId, "viewer"));
  const choice = chooseRevisions(
    revisions.map(({ number }) => number),
    asked,
  );
  const chosen = (number: number | null) => revisions.find((revision) => revision.number === number) ?? null;
  return { ...page, revisions, from: chosen(choice.from), to: chosen(choice.to), says: choice.says };
}
