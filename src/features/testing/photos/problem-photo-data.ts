import "server-only";
import { callScope, type CallAccess } from "@/features/calls/access";
import { database } from "@/server/database";

/** A tester's photo of a problem. */
export interface ProblemPhoto {
  readonly photoId: string;
  readonly testerId: string;
  /** What the tester wrote about it; "" for nothing. */
  readonly note: string;
}

/** The photos of problems that some of a call's testers sent, oldest first. */
export async function readProblemPhotos(access: CallAccess, testerIds: readonly string[]): Promise<ProblemPhoto[]> {
  if (testerIds.length === 0) return [];
  const rows = await database().photo.findMany({
    where: { view: "problem", state: "ready", tester: { id: { in: [...testerIds] }, call: callScope(access) } },
    orderBy: [{ createdAt: "asc" }, { id: "asc" }],
    select: { id: true, testerId: true, note: true },
  });
  return rows.flatMap(({ id, testerId, note }) => (testerId === null ? [] : [{ photoId: id, testerId, note }]));
}
