import { photoSources } from "./photo-address";

interface PhotoPictureProps {
  readonly photoId: string;
  /** Its width on the page, for the browser's choice of a file. */
  readonly width: `${number}rem`;
  readonly alt: string;
  /** Its size and shape, into which the photo is cropped. */
  readonly shape: string;
  /** In sight as soon as the page is. */
  readonly isFirst?: boolean;
}

/** A stored photo. It is served through an access check, so Next's image server cannot fetch it. */
export function PhotoPicture({ photoId, width, alt, shape, isFirst = false }: PhotoPictureProps) {
  return (
    // eslint-disable-next-line @next/next/no-img-element
    <img
      {...photoSources(photoId)}
      sizes={width}
      alt={alt}
      loading={isFirst ? "eager" : "lazy"}
      className={`${shape} bg-band object-cover`}
    />
  );
}
