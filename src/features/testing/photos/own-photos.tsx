import { OneButtonForm } from "@/ui/one-button-form";
import { deletePhoto } from "./photo-actions";
import { VIEW_LABELS } from "./photo-copy";
import type { OwnPhoto } from "./own-photo-data";
import { StoredPhoto } from "./stored-photo";

interface OwnPhotoListProps {
  readonly testerId: string;
  readonly photos: readonly OwnPhoto[];
  /** They are shown where what is wrong is said already. */
  readonly areAtTrouble?: boolean;
}

/** A tester's photos, each with a button to delete it. */
export function OwnPhotoList({ testerId, photos, areAtTrouble = false }: OwnPhotoListProps) {
  return (
    <ul
      aria-label={areAtTrouble ? "Your photos of this problem" : "Your photos"}
      className={`grid gap-4 ${areAtTrouble ? "grid-cols-[repeat(auto-fill,minmax(min(100%,7rem),1fr))]" : "grid-cols-[repeat(auto-fill,minmax(min(100%,9rem),1fr))]"}`}
    >
      {photos.map((photo, index) => (
        <li key={photo.photoId} className="min-w-0">
          <StoredPhoto {...photo} alt={`Your photo: ${VIEW_LABELS[photo.view]}`} />
          {areAtTrouble ? null : <p className="mt-1 font-semibold">{VIEW_LABELS[photo.view]}</p>}
          {areAtTrouble || photo.note === "" ? null : (
            <p dir="auto" className="line-clamp-4 text-sm wrap-anywhere">
              {photo.note}
            </p>
          )}
          <OneButtonForm
            action={deletePhoto}
            sends={{ testerId, photoId: photo.photoId }}
            button="Delete"
            waiting="Deleting …"
            about={`photo ${index + 1}, ${VIEW_LABELS[photo.view]}`}
            look="plain"
          />
        </li>
      ))}
    </ul>
  );
}
