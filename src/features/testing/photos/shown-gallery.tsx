import type { PatternDocument } from "@/engine/pattern";
import { Section } from "@/ui/section";
import { VIEW_LABELS } from "./photo-copy";
import { PhotoImage } from "./photo-image";
import type { ShownPhoto } from "./shown-photo-data";

interface ShownGalleryProps {
  readonly photos: readonly ShownPhoto[];
  readonly pattern: Pick<PatternDocument, "name" | "sizes">;
}

/** Testers' garments on the public page of a test, each with the name that its maker wishes; nothing where there is none. */
export function ShownGallery({ photos, pattern: { name, sizes } }: ShownGalleryProps) {
  if (photos.length === 0) return null;
  return (
    <Section title="Made by testers">
      <ul className="grid grid-cols-[repeat(auto-fill,minmax(min(100%,8.5rem),1fr))] gap-4 sm:grid-cols-[repeat(auto-fill,minmax(11rem,1fr))] sm:gap-5">
        {photos.map(({ photoId, view, size, creditName }) => {
          const label = sizes.find(({ id }) => id === size)?.label ?? size;
          return (
            <li key={photoId} className="min-w-0">
              <figure>
                <PhotoImage
                  photoId={photoId}
                  width="11rem"
                  alt={`${name}, size ${label}: ${VIEW_LABELS[view].toLowerCase()}`}
                  shape="aspect-[4/5]"
                />
                <figcaption className="mt-1 text-sm wrap-anywhere">
                  Size <bdi>{label}</bdi>
                  {creditName === "" ? null : (
                    <>
                      , made by <bdi className="font-semibold">{creditName}</bdi>
                    </>
                  )}
                </figcaption>
              </figure>
            </li>
          );
        })}
      </ul>
    </Section>
  );
}
