import type { ComponentProps } from "react";
import { photoAddress } from "./photo-address";
import { PhotoPicture } from "./photo-picture";

/** A photo as wide as its place that leads to its largest size. */
export function PhotoImage({ shape, ...picture }: ComponentProps<typeof PhotoPicture>) {
  return (
    <a href={photoAddress(picture.photoId, 1920)}>
      <PhotoPicture {...picture} shape={`${shape} w-full`} />
    </a>
  );
}
