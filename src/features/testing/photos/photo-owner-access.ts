import "server-only";
import { patternAccess, type PatternAccess } from "@/features/patterns/access";
import { actingViewer } from "@/server/action";
import type { TesterAccess } from "../home/access";
import { testerAccess } from "../home/request-access";
import type { PhotoOwnerId } from "./photo-schema";

/** Proof that somebody may send and delete photos: a tester their own, an editor of a pattern those of its sample. */
export type PhotoOwner = { readonly tester: TesterAccess } | { readonly pattern: PatternAccess };

/** @throws {AppError} "not-found", "not-allowed" or "signed-out" where they may not. */
export async function photoOwner(id: PhotoOwnerId): Promise<PhotoOwner> {
  if ("testerId" in id) return { tester: await testerAccess(id.testerId) };
  return { pattern: await patternAccess(await actingViewer(), id.patternId, "editor") };
}

/** The owner as a photo's row names them. */
export function ownerColumns(owner: PhotoOwner): { testerId: string | null; patternId: string | null } {
  return "tester" in owner
    ? { testerId: owner.tester.testerId, patternId: null }
    : { testerId: null, patternId: owner.pattern.patternId };
}
