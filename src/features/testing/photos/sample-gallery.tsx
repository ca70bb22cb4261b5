import { sampleAlt } from "./photo-copy";
import { PhotoImage } from "./photo-image";
import type { SamplePhoto } from "./sample-data";

interface SampleGalleryProps {
  /** The main one first. */
  readonly photos: readonly SamplePhoto[];
  readonly patternName: string;
}

/** The designer's sample on the page of a tester call: the main photo large, the others below it; nothing where there is none. */
export function SampleGallery({ photos: [main, ...others], patternName }: SampleGalleryProps) {
  if (main === undefined) return null;
  return (
    <figure className="grid gap-3">
      <PhotoImage
        photoId={main.photoId}
        width="30rem"
        alt={sampleAlt(main, patternName)}
        shape="aspect-[4/5] max-h-[36rem]"
        isFirst
      />
      {others.length === 0 ? null : (
        <ul aria-label="More photos" className="grid grid-cols-[repeat(auto-fill,minmax(5rem,1fr))] gap-3">
          {others.map((photo) => (
            <li key={photo.photoId}>
              <PhotoImage
                photoId={photo.photoId}
                width="6rem"
                alt={sampleAlt(photo, patternName)}
                shape="aspect-square"
              />
            </li>
          ))}
        </ul>
      )}
      <figcaption className="text-sm text-soft">The designer’s sample</figcaption>
    </figure>
  );
}
