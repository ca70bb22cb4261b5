import { sampleAlt } from "./photo-copy";
import { PhotoPicture } from "./photo-picture";
import type { SamplePhoto } from "./sample-data";

/** A pattern's main photo on its card, beside its name. */
export function MainPhoto({ photo, patternName }: { readonly photo: SamplePhoto; readonly patternName: string }) {
  return (
    <PhotoPicture photoId={photo.photoId} width="7rem" alt={sampleAlt(photo, patternName)} shape="size-28 rounded-sm" />
  );
}
