import "server-only";
import { z } from "zod";
import { callAccess, callScope, type CallAccess } from "@/features/calls/access";
import { patternAccess, patternScope } from "@/features/patterns/access";
import { PUBLISHED } from "@/features/recruiting/listing/access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import type { Proof } from "@/server/proof";
import { optionalViewer, type Viewer } from "@/server/viewer";
import { testerScope } from "../home/access";
import { testerAccess } from "../home/request-access";
import { shownPhotos } from "./shown-photo-data";

/** Proof that somebody may see a photo: the tester whose it is, whoever has a part in its pattern, or everybody. */
export interface PhotoAccess extends Proof<"photo"> {
  readonly photoId: string;
  /** Where clause of whose it is, by the proof of whoever asks. */
  readonly owner: Prisma.PhotoWhereInput;
  /** Everybody may see it for long, because it is of a designer's sample and on the page of a published call. */
  readonly isPublic: boolean;
  /** Who looks at it, where it is a tester’s and not theirs. */
  readonly seenBy: { readonly call: CallAccess; readonly testerId: string } | null;
}

/** @throws {AppError} "not-found" where there is no such photo, or it is not for whoever asks. */
export async function photoAccess(photoId: string): Promise<PhotoAccess> {
  if (!z.uuid().safeParse(photoId).success) throw new AppError("not-found");
  const row = await database().photo.findUnique({
    where: { id: photoId },
    select: { patternId: true, shownSince: true, tester: { select: { id: true, callId: true } } },
  });
  if (row?.patternId != null) return await samplePhotoAccess(photoId, row.patternId);
  if (row?.tester == null) throw new AppError("not-found");
  const { id: testerId, callId } = row.tester;
  const shown = shownPhotos({ calls: { some: PUBLISHED } });
  if (row.shownSince !== null && (await database().photo.count({ where: { AND: [{ id: photoId }, shown] } })) > 0)
    return { photoId, owner: shown, isPublic: false, seenBy: null } as PhotoAccess;
  const own = await testerAccess(testerId).catch(nullWhereNotFound);
  if (own !== null)
    return { photoId, owner: { tester: testerScope(own) }, isPublic: false, seenBy: null } as PhotoAccess;
  const call = await callAccess(await someViewer(), callId, "viewer");
  const owner = { tester: { id: testerId, call: callScope(call) } };
  return { photoId, owner, isPublic: false, seenBy: { call, testerId } } as PhotoAccess;
}

async function samplePhotoAccess(photoId: string, patternId: string): Promise<PhotoAccess> {
  const open = { pattern: { id: patternId, calls: { some: PUBLISHED } } };
  if ((await database().photo.count({ where: { id: photoId, ...open } })) > 0)
    return { photoId, owner: open, isPublic: true, seenBy: null } as PhotoAccess;
  const pattern = patternScope(await patternAccess(await someViewer(), patternId, "viewer"));
  return { photoId, owner: { pattern }, isPublic: false, seenBy: null } as PhotoAccess;
}

/** @throws {AppError} "not-found" where nobody is signed in. */
async function someViewer(): Promise<Viewer> {
  const viewer = await optionalViewer();
  if (viewer === null) throw new AppError("not-found");
  return viewer;
}

/** Where clause of the photo that was proved. */
export function photoScope({ photoId, owner }: PhotoAccess): Prisma.PhotoWhereInput {
  return { id: photoId, ...owner };
}

function nullWhereNotFound(error: unknown): null {
  if (error instanceof AppError && error.code === "not-found") return null;
  throw error;
}
