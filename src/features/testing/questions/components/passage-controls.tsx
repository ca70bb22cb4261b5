import type { PlaceQuery } from "../place-query";

interface PassageControlsProps {
  /** Its key. */
  readonly passage: string;
  /** Its first words. */
  readonly about: string;
  /** The reader has marked it. */
  readonly isOwn: boolean;
  /** The page that opens a form; null if nothing can be sent, or the form is open. */
  readonly sayHref: string | null;
  readonly onMark: (passage: string | null) => void;
}

/** What can be done at the tapped passage. */
export function PassageControls({ passage, about, isOwn, sayHref, onMark }: PassageControlsProps) {
  const address = (say: PlaceQuery["say"]) => `${sayHref ?? ""}?place=${passage}&say=${say}#place-${passage}`;
  return (
    <div role="group" aria-label={`At “${about}”`} className="say">
      <button type="button" onClick={() => onMark(isOwn ? null : passage)}>
        {isOwn ? "Remove mark" : "I am here"}
      </button>
      {sayHref === null ? null : (
        <>
          <a href={address("question")}>Ask about this</a>
          <a href={address("trouble")}>Something went wrong here</a>
        </>
      )}
    </div>
  );
}
