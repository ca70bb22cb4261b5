import { OneButtonForm } from "@/ui/one-button-form";
import { VIEW_LABELS, sampleAlt } from "./photo-copy";
import { DescriptionForm } from "./description-form";
import { chooseMainPhoto, deleteSamplePhoto } from "./sample-actions";
import type { OwnPhoto } from "./own-photo-data";
import { StoredPhoto } from "./stored-photo";

interface SamplePhotoListProps {
  readonly patternId: string;
  readonly patternName: string;
  /** The main one first. */
  readonly photos: readonly OwnPhoto[];
  readonly mayEdit: boolean;
}

/** The photos of a pattern's sample: what each shows, which is the main one. */
export function SamplePhotoList({ patternId, patternName, photos, mayEdit }: SamplePhotoListProps) {
  const mainId = photos.find(({ state }) => state === "ready")?.photoId;
  return (
    <ul
      aria-label="Photos of your sample"
      className="grid grid-cols-[repeat(auto-fill,minmax(min(100%,14rem),1fr))] gap-6"
    >
      {photos.map((photo, index) => {
        const { photoId, state, reason, view, note } = photo;
        const usual = sampleAlt({ view, note: "" }, patternName);
        const about = `photo ${index + 1}, ${VIEW_LABELS[view]}`;
        return (
          <li key={photoId} className="min-w-0">
            <StoredPhoto {...{ photoId, state, reason }} alt={sampleAlt(photo, patternName)} />
            <p className="mt-1 font-semibold">
              {VIEW_LABELS[view]}
              {photoId === mainId ? <span className="text-thread"> · main photo</span> : null}
            </p>
            {mayEdit && state === "ready" ? <DescriptionForm {...{ patternId, photoId, note, usual }} /> : null}
            {mayEdit ? (
              <div className="mt-2 flex flex-wrap gap-x-5">
                {state === "ready" && photoId !== mainId ? (
                  <OneButtonForm
                    action={chooseMainPhoto}
                    sends={{ patternId, photoId }}
                    button="Make main photo"
                    waiting="Saving …"
                    about={about}
                    look="plain"
                  />
                ) : null}
                <OneButtonForm
                  action={deleteSamplePhoto}
                  sends={{ patternId, photoId }}
                  button="Delete"
                  waiting="Deleting …"
                  about={about}
                  look="plain"
                />
              </div>
            ) : null}
          </li>
        );
      })}
    </ul>
  );
}
