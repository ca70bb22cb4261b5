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
  const about = <span className="sr-only">: {happened.slice(0, 80)}</span>;
  const close = (
    <Link href={`${here}#${id}`} prefetch={false} className="text-link inline-flex min-h-8 items-center">
      Close{about}
    </Link>
  );
  return (
    <div id={id} className="grid scroll-mt-24 gap-3 empty:hidden">
      {photos.length === 0 ? null : <OwnPhotoList {...{ testerId, photos }} areAtTrouble />}
      {photos.some(({ state }) => state === "received") ? (
        <WatchFor address={`/testing/${testerId}/photos/state`} />
      ) : null}
      {adding === null ? null : adding.openAt === troubleId ? (
        <div className="border-t border-line pt-3">
          <PhotoForm
            owner={{ testerId }}
            views={["problem"]}
            {...{ troubleId }}
            beside={close}
            stored={adding.stored}
            formKey={adding.formKey}
          />
        </div>
      ) : (
        <div>
          <Link href={`${here}?photo=${troubleId}#${id}`} prefetch={false} className="button button-quiet">
            Add a photo{about}
          </Link>
        </div>
      )}
    </div>
  );
}
