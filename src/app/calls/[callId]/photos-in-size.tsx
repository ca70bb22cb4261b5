import type { Size } from "@/engine/pattern";
import type { CallAccess } from "@/features/calls/access";
import { readSheetPhotos } from "@/features/testing/photos/photo-sheet-data";
import { SizePhotos } from "@/features/testing/photos/size-photos";

interface PhotosInSizeProps {
  readonly access: CallAccess;
  readonly size: Pick<Size, "id" | "label">;
}

/** What the garments of one size look like, beside its results. */
export async function PhotosInSize({ access, size }: PhotosInSizeProps) {
  return <SizePhotos callId={access.callId} size={size} photos={await readSheetPhotos(access, size.id)} />;
}
