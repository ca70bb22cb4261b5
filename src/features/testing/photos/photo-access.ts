import "server-only";
import { z } from "zod";
import { callAccess, callScope } from "@/features/calls/access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import type { Proof } from "@/server/proof";
import { optionalViewer } from "@/server/viewer";
import { testerAccess, testerScope } from "../home/access";

/** Proof that somebody may see a photo: the tester whose it is, or whoever has a part in the test's pattern. */
export interface PhotoAccess extends Proof<"photo"> {
  readonly photoId: string;
  /** Where clause of the tester whose it is, by the proof of whoever asks. */
  readonly tester: Prisma.TesterWhereInput;
}

/** @throws {AppError} "not-found" where there is no such photo, or it is not for whoever asks. */
export async function photoAccess(photoId: string): Promise<PhotoAccess> {
  if (!z.uuid().safeParse(photoId).success) throw new AppError("not-found");
  const row = await database().photo.findUnique({
    where: { id: photoId },
    select: { testerId: true, tester: { select: { callId: true } } },
  });
  if (row === null) throw new AppError("not-found");
  const own = await testerAccess(row.testerId).catch(nullWhereNotFound);
  if (own !== null) return { photoId, tester: testerScope(own) } as PhotoAccess;
  const viewer = await optionalViewer();
  if (viewer === null) throw new AppError("not-found");
  const call = await callAccess(viewer, row.tester.callId, "viewer");
  return { photoId, tester: { id: row.testerId, call: callScope(call) } } as PhotoAccess;
}

/** Where clause of the photo that was proved. */
export function photoScope({ photoId, tester }: PhotoAccess): Prisma.PhotoWhereInput {
  return { id: photoId, tester };
}

function nullWhereNotFound(error: unknown): null {
  if (error instanceof AppError && error.code === "not-found") return null;
  throw error;
}
