import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { SHOWABLE } from "./shown-photo-data";

/**
 * Shows a tester's photo on the pattern's public page, or no more.
 *
 * @throws {AppError} "not-found" where it is not the viewer's to edit; "changed-meanwhile" where the tester does not allow it.
 */
export async function showPhoto(
  access: CallAccess,
  { photoId, isShown }: { readonly photoId: string; readonly isShown: boolean },
): Promise<void> {
  const photo = { id: photoId, tester: { call: callEditScope(access) } };
  if ((await database().photo.count({ where: photo })) === 0) throw new AppError("not-found");
  const { count } = await database().photo.updateMany({
    where: isShown ? { AND: [photo, SHOWABLE] } : photo,
    data: { shownSince: isShown ? new Date() : null },
  });
  if (count === 0)
    throw new AppError("changed-meanwhile", "The tester does not allow this photo on the pattern’s page.");
}
