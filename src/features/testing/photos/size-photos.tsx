import Link from "next/link";
import { VIEW_LABELS } from "./photo-copy";
import { PhotoPicture } from "./photo-picture";
import type { PhotoView } from "./photo-views";
import type { SheetPhoto } from "./photo-sheet-data";
import { sheetHref } from "./sheet-page";

interface SizePhotosProps {
  readonly callId: string;
  readonly size: { readonly id: string; readonly label: string };
  readonly photos: readonly SheetPhoto[];
}

const SHOWN = 12;
/** The same of every tester beside each other. */
const ORDER: readonly PhotoView[] = ["front", "back", "side", "problem", "swatch"];

/** The photos of one size's testers in small, beside what is calculated from their reports; nothing where there are none. */
export function SizePhotos({ callId, size, photos }: SizePhotosProps) {
  if (photos.length === 0) return null;
  return (
    <section aria-label={`Photos of size ${size.label}`} className="mt-6">
      <div className="mb-2 flex flex-wrap items-baseline gap-x-5 gap-y-1">
        <p className="font-semibold">Photos of size {size.label}</p>
        <Link href={sheetHref(callId, { size: size.id })} prefetch={false} className="text-link text-sm">
          {photos.length > SHOWN ? `See all ${photos.length}` : "Compare them"}
        </Link>
      </div>
      <ul className="flex flex-wrap gap-3">
        {ORDER.flatMap((view) => photos.filter((photo) => photo.view === view))
          .slice(0, SHOWN)
          .map(({ photoId, view, name }) => (
            <li key={photoId} className="w-20 min-w-0 text-xs">
              <Link href={sheetHref(callId, { size: size.id, view })} prefetch={false}>
                <PhotoPicture
                  photoId={photoId}
                  width="5rem"
                  alt={`${VIEW_LABELS[view]}, by ${name}`}
                  shape="aspect-[4/5] w-full"
                />
              </Link>
              <p aria-hidden="true" className="mt-0.5 truncate text-soft">
                <bdi>{name}</bdi>
              </p>
            </li>
          ))}
      </ul>
    </section>
  );
}
