import type { PhotoSize } from "./photo-views";

/** Where a photo is served, to those who may see it. */
export function photoAddress(photoId: string, size: PhotoSize): string {
  return `/photos/${photoId}?size=${size}`;
}

/** A photo in the sizes that browsers choose from, by its width on the page. */
export function photoSources(photoId: string) {
  return {
    src: photoAddress(photoId, 320),
    srcSet: `${photoAddress(photoId, 320)} 320w, ${photoAddress(photoId, 960)} 960w`,
  };
}
