import type { Size } from "@/engine/pattern";
import type { CallAccess } from "@/features/calls/access";
import { noteSeen } from "@/features/recruiting/views/seen-data";
import { readSheetPhotos } from "@/features/testing/photos/photo-sheet-data";
import { SizePhotos } from "@/features/testing/photos/size-photos";

interface PhotosInSizeProps {
  readonly access: CallAccess;
  readonly size: Pick<Size, "id" | "label">;
}

/** What the garments of one size look like, beside its results. */
export async function PhotosInSize({ access, size }: PhotosInSizeProps) {
  const photos = await readSheetPhotos(access, size.id);
  if (photos.length > 0) await noteSeen(access, { kind: "photos", testers: photos.map(({ testerId }) => testerId) });
  return <SizePhotos callId={access.callId} size={size} photos={photos} />;
}
