import "server-only";
import { cache } from "react";
import { z } from "zod";
import { rebaseDraft, type PatternDraft } from "@/engine/editing";
import { AppError } from "@/server/errors";
import { foundOr404 } from "@/server/found-or-404";
import { requireViewer, type Viewer } from "@/server/viewer";
import { patternAccess, reaches } from "./access";
import {
  draftOf,
  conflictingDraftOf,
  latestRevision,
  listCalls,
  listPatterns,
  listRevisions,
  revisionByNumber,
  type Draft,
  type PatternSummary,
  type Revision,
} from "./data";
import { patternMarks, type PatternMarks } from "./pattern-marks-data";
import { publishedVersions, type PublishedVersion } from "./published-data";

/** What every page of a pattern shows. */
export interface PatternPage extends PatternMarks {
  readonly viewer: Viewer;
  readonly patternId: string;
  readonly mayEdit: boolean;
  readonly isOwner: boolean;
  readonly revision: Revision;
}

export async function loadPatterns(): Promise<readonly PatternSummary[]> {
  return await listPatterns(await requireViewer());
}

/** A pattern in its newest revision; read once for a page and its title. */
export const loadPattern = cache((patternId: string): Promise<PatternPage> => foundOr404(patternPage(patternId)));

async function patternPage(patternId: string): Promise<PatternPage> {
  const viewer = await requireViewer();
  const access = await patternAccess(viewer, patternId, "viewer");
  const [revision, marks] = await Promise.all([latestRevision(access), patternMarks(access)]);
  const { role } = access;
  return { viewer, patternId, mayEdit: reaches(role, "editor"), isOwner: reaches(role, "owner"), ...marks, revision };
}

export async function loadOverview(
  patternId: string,
): Promise<PatternPage & Pick<PatternSummary, "calls" | "archivedCalls"> & { readonly draft: Draft | null }> {
  const page = await loadPattern(patternId);
  const access = await patternAccess(page.viewer, patternId, "viewer");
  const [calls, draft] = await Promise.all([listCalls(access), draftOf(access)]);
  return { ...page, ...calls, draft };
}

/** A pattern to edit: edits apply to the newest revision, even if they were started on an earlier one. */
export async function loadEditing(patternId: string): Promise<
  PatternPage & {
    readonly draft: Draft | null;
    readonly late: { readonly content: PatternDraft | null } | null;
  }
> {
  const page = await loadPattern(patternId);
  const access = await patternAccess(page.viewer, patternId, "viewer");
  const [draft, late] = await Promise.all([draftOf(access), page.mayEdit ? conflictingDraftOf(access) : null]);
  if (draft === null || draft.content === null || draft.baseNumber === page.revision.number)
    return { ...page, draft, late };
  const from = await revisionByNumber(access, draft.baseNumber);
  const content = rebaseDraft(draft.content, from.document, page.revision.document);
  return { ...page, draft: { ...draft, content }, late };
}

export async function loadRevisions(
  patternId: string,
): Promise<PatternPage & { readonly revisions: readonly Revision[]; readonly versions: readonly PublishedVersion[] }> {
  const page = await loadPattern(patternId);
  const access = await patternAccess(page.viewer, patternId, "viewer");
  const [revisions, versions] = await Promise.all([listRevisions(access), publishedVersions(access)]);
  return { ...page, revisions, versions };
}

const numberSchema = z
  .string()
  .regex(/^[1-9]\d{0,8}$/)
  .transform(Number);

/** One revision, and the one before it. */
export async function loadRevision(
  patternId: string,
  typedNumber: string,
): Promise<PatternPage & { readonly read: Revision; readonly before: Revision | null }> {
  const page = await loadPattern(patternId);
  const access = await patternAccess(page.viewer, patternId, "viewer");
  const number = numberSchema.safeParse(typedNumber);
  const load = number.success ? revisionByNumber(access, number.data) : Promise.reject(new AppError("not-found"));
  const read = await foundOr404(load);
  const before = read.number === 1 ? null : await revisionByNumber(access, read.number - 1);
  return { ...page, read, before };
}

/** The newest or the requested revision. @throws {AppError} "not-found". */
export async function exportPattern(patternId: string, typedNumber: string | null): Promise<Revision> {
  const access = await patternAccess(await requireViewer(), patternId, "viewer");
  if (typedNumber === null) return await latestRevision(access);
  const number = numberSchema.safeParse(typedNumber);
  if (!number.success) throw new AppError("not-found");
  return await revisionByNumber(access, number.data);
}
