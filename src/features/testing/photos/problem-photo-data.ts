import "server-only";
import { callScope, type CallAccess } from "@/features/calls/access";
import { database } from "@/server/database";

/** A tester's photo of a problem. */
export interface ProblemPhoto {
  readonly photoId: string;
  readonly testerId: string;
  /** The trouble spot that it shows; null for none. */
  readonly troubleId: string | null;
  /** What the tester wrote about it; "" for nothing. */
  readonly note: string;
}

/** The photos of problems that some of a call's testers sent, oldest first. */
export async function readProblemPhotos(access: CallAccess, testerIds: readonly string[]): Promise<ProblemPhoto[]> {
  if (testerIds.length === 0) return [];
  const rows = await database().photo.findMany({
    where: { view: "problem", state: "ready", tester: { id: { in: [...testerIds] }, call: callScope(access) } },
    orderBy: [{ createdAt: "asc" }, { id: "asc" }],
    select: { id: true, testerId: true, troubleId: true, note: true },
  });
  return rows.flatMap(({ id, testerId, ...photo }) => (testerId === null ? [] : [{ photoId: id, testerId, ...photo }]));
}

/** Those that show a trouble spot, and its tester's that show none in particular. */
export function photosOfTrouble(
  photos: readonly ProblemPhoto[],
  trouble: { readonly id: string; readonly testerId: string },
): ProblemPhoto[] {
  return photos.filter(
    ({ testerId, troubleId }) => testerId === trouble.testerId && (troubleId ?? trouble.id) === trouble.id,
  );
}
