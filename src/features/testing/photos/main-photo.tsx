import { sampleAlt } from "./photo-copy";
import { photoSources } from "./photo-address";
import type { SamplePhoto } from "./sample-data";

/** A pattern's main photo on its card, beside its name. */
export function MainPhoto({ photo, patternName }: { readonly photo: SamplePhoto; readonly patternName: string }) {
  return (
    // Served through an access check, so Next's image server cannot fetch it.
    // eslint-disable-next-line @next/next/no-img-element
    <img
      {...photoSources(photo.photoId)}
      sizes="7rem"
      alt={sampleAlt(photo, patternName)}
      loading="lazy"
      className="size-28 rounded-sm bg-band object-cover"
    />
  );
}
