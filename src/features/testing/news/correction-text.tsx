import type { LoadedTester } from "../home/loaders";
import { dayIn } from "../home/due-copy";
import type { Correction } from "../corrections/correction-data";
import { PlaceLink } from "./place-link";

interface CorrectionTextProps {
  readonly correction: Correction;
  readonly tester: LoadedTester["tester"];
}

/** A correction as a tester reads it: who, when, the whole text, and the passage that it concerns. */
export function CorrectionText({ correction, tester }: CorrectionTextProps) {
  const { text, place, author, createdAt, revisionNumber } = correction;
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
      {place === null ? null : (
        <div className="mt-1 wrap-anywhere">
          <PlaceLink testerId={tester.testerId} text={document.instructions ?? ""} place={place} />
        </div>
      )}
    </>
  );
}
