import { photoAddress, photoSources } from "./photo-address";

interface PhotoImageProps {
  readonly photoId: string;
  /** Its width on the page, for the browser's choice of a file. */
  readonly width: `${number}rem`;
  readonly alt: string;
  /** Its shape, into which the photo is cropped. */
  readonly shape: string;
  /** In sight as soon as the page is. */
  readonly isFirst?: boolean;
}

/** A photo that leads to its largest size. */
export function PhotoImage({ photoId, width, alt, shape, isFirst = false }: PhotoImageProps) {
  return (
    <a href={photoAddress(photoId, 1920)}>
      {/* Served through an access check, so Next's image server cannot fetch it. */}
      {/* eslint-disable-next-line @next/next/no-img-element */}
      <img
        {...photoSources(photoId)}
        sizes={width}
        alt={alt}
        loading={isFirst ? "eager" : "lazy"}
        className={`${shape} w-full bg-band object-cover`}
      />
    </a>
  );
}
