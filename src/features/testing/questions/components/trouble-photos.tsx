import Link from "next/link";
import { OwnPhotoList } from "@/features/testing/photos/own-photos";
import type { OwnPhoto } from "@/features/testing/photos/own-photo-data";
import { PhotoForm } from "@/features/testing/photos/photo-form";
import { WatchFor } from "@/ui/watch-for";

/** What a form for photos of a trouble spot needs. */
export interface AddingPhotos {
  /** The trouble spot whose form is open; null for none. */
  readonly openAt: string | null;
  /** How many photos the tester has stored. */
  readonly stored: number;
  /** Makes the ids of what is sent without scripts. */
  readonly formKey: string;
}

interface TroublePhotosProps {
  readonly testerId: string;
  readonly troubleId: string;
  readonly happened: string;
  readonly photos: readonly OwnPhoto[];
  readonly adding: AddingPhotos | null;
}

/** A tester's photos of one of their trouble spots, and where they add more. */
export function TroublePhotos({ testerId, troubleId, happened, photos, adding }: TroublePhotosProps) {
  const id = `trouble-${troubleId}`;
  const here = `/testing/${testerId}/pattern`;
  const link = (href: string, words: string) => (
    <Link href={href} prefetch={false} className="text-link inline-flex min-h-8 items-center text-sm">
      {words}
      <span className="sr-only">: {happened.slice(0, 80)}</span>
    </Link>
  );
  return (
    <div id={id} className="grid scroll-mt-24 gap-2">
      {photos.length === 0 ? null : <OwnPhotoList {...{ testerId, photos }} areAtTrouble />}
      {photos.some(({ state }) => state === "received") ? (
        <WatchFor address={`/testing/${testerId}/photos/state`} />
      ) : null}
      {adding === null ? null : adding.openAt === troubleId ? (
        <>
          <PhotoForm
            owner={{ testerId }}
            views={["problem"]}
            {...{ troubleId }}
            stored={adding.stored}
            formKey={adding.formKey}
          />
          {link(`${here}#${id}`, "Close")}
        </>
      ) : (
        link(`${here}?photo=${troubleId}#${id}`, "Add a photo")
      )}
    </div>
  );
}
