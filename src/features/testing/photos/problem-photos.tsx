import { PhotoImage } from "./photo-image";
import type { ProblemPhoto } from "./problem-photo-data";

interface ProblemPhotosProps {
  readonly photos: readonly ProblemPhoto[];
  /** The tester who sent them. */
  readonly name: string;
}

/** What one tester photographed of their problems; nothing where that is nothing. */
export function ProblemPhotos({ photos, name }: ProblemPhotosProps) {
  if (photos.length === 0) return null;
  return (
    <ul aria-label={`Photos of problems, by ${name}`} className="mt-2 flex flex-wrap gap-3">
      {photos.map(({ photoId, note }) => (
        <li key={photoId} className="w-24 min-w-0 text-sm">
          <PhotoImage photoId={photoId} width="6rem" alt={`Problem, by ${name}`} shape="aspect-[4/5]" />
          {note === "" ? null : (
            <p dir="auto" className="mt-0.5 text-soft wrap-anywhere">
              {note}
            </p>
          )}
        </li>
      ))}
    </ul>
  );
}
