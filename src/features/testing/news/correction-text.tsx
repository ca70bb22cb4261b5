import type { LoadedTester } from "../home/loaders";
import { dayIn } from "../home/due-copy";
import type { Correction } from "../corrections/correction-data";
import { NumberChanges } from "../corrections/number-changes";
import { placeKey } from "../questions/place-key";
import { PlaceLink } from "./place-link";

interface CorrectionTextProps {
  readonly correction: Correction;
  readonly tester: LoadedTester["tester"];
}

/** A correction as a tester reads it: who, when, the whole text, and the passage that it concerns. */
export function CorrectionText({ correction, tester }: CorrectionTextProps) {
  const { text, places, numbers, author, createdAt, revisionNumber } = correction;
  const { number, document } = tester.revision;
  return (
    <>
      <p className="numbers text-sm text-soft wrap-anywhere">
        <span className="font-semibold text-thread">Correction</span> by <bdi>{author ?? tester.call.designerName}</bdi>
        , {dayIn(createdAt, tester.timeZone)}
        {revisionNumber === number ? "" : `, written for revision ${revisionNumber}`}
      </p>
      <p dir="auto" className="mt-1 whitespace-pre-line text-lg leading-snug wrap-anywhere">
        {text}
      </p>
      <NumberChanges numbers={numbers} pattern={document} size={tester.size.id} />
      {places.map((place) => (
        <div key={placeKey(place)} className="mt-1 wrap-anywhere">
          <PlaceLink testerId={tester.testerId} text={document.instructions ?? ""} place={place} />
        </div>
      ))}
    </>
  );
}
