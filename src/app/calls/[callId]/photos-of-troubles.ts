import type { CallAccess } from "@/features/calls/access";
import { noteSeen } from "@/features/recruiting/views/seen-data";
import { readProblemPhotos, type ProblemPhoto } from "@/features/testing/photos/problem-photo-data";
import type { TroubledPlaces } from "@/features/testing/questions/place-notes-data";

/** What the testers of the shown trouble spots photographed of their problems; it is noted that somebody looked. */
export async function photosOfTroubles(access: CallAccess, { places }: TroubledPlaces): Promise<ProblemPhoto[]> {
  const shown = places.flatMap(({ troubles }) => troubles.shown.map(({ testerId }) => testerId));
  const photos = await readProblemPhotos(access, shown);
  if (photos.length > 0) await noteSeen(access, { kind: "photos", testers: photos.map(({ testerId }) => testerId) });
  return photos;
}
