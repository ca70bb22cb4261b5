import { randomUUID } from "node:crypto";
import { readInstructions } from "@/engine/instructions";
import type { PatternDocument } from "@/engine/pattern";
import { Day } from "@/ui/day";
import { Section } from "@/ui/section";
import { sizeLabel } from "../questions/components/note-author";
import { placeKey } from "../questions/place-key";
import { AnswerGroups } from "./answer-groups";
import type { PublishedCorrection } from "./correction-data";
import { CorrectionForm } from "./correction-form";
import type { CorrectionQuery } from "./correction-query";
import { countNumbers } from "./count-numbers";
import { TakeInForm } from "./take-in-form";
import { NumberChanges } from "./number-changes";

const LONGEST_CHOICE = 70;
const ANCHOR = "corrections";

interface CorrectionsSectionProps {
  readonly callId: string;
  readonly pattern: PatternDocument;
  readonly corrections: readonly PublishedCorrection[];
  readonly mayEdit: boolean;
  /** The newest revision's. */
  readonly revisionNumber: number;
  /** The newest published version; null where none is published. */
  readonly version: string | null;
  /** What the form holds at first. */
  readonly asked: CorrectionQuery;
}

/** Leads to the corrections from the top of their page. */
export function CorrectionsLink({ corrections }: Pick<CorrectionsSectionProps, "corrections">) {
  const many = corrections.length;
  return (
    <a href={`#${ANCHOR}`} className="text-link inline-flex min-h-8 items-center text-base">
      {many === 0 ? "Corrections" : many === 1 ? "1 correction published" : `${many} corrections published`}
    </a>
  );
}

/** The corrections of a call, who has read them, and the form for another. */
export function CorrectionsSection({
  callId,
  pattern,
  corrections,
  mayEdit,
  asked,
  revisionNumber,
  version,
}: CorrectionsSectionProps) {
  const places = readInstructions(pattern.instructions ?? "").map(({ place, text }) => ({
    key: placeKey(place),
    words: text.length > LONGEST_CHOICE ? `${text.slice(0, LONGEST_CHOICE)}…` : text,
  }));
  return (
    <div id={ANCHOR} className="scroll-mt-4">
      <Section
        title="Corrections"
        intro={`For an error that you have found in the pattern. It goes to the testers of the sizes that it concerns.${version === null ? "" : ` The pattern is published as version ${version}, so it is listed under Errata, too.`}`}
      >
        {corrections.length === 0 ? (
          <p className="text-soft">No corrections published yet.</p>
        ) : (
          <ul className="grid max-w-3xl gap-3">
            {corrections.map((correction) => (
              <li
                key={correction.correctionId}
                className="rounded-sheet border border-line bg-sheet px-5 py-4 shadow-sheet"
              >
                <PublishedEntry correction={correction} pattern={pattern} />
              </li>
            ))}
          </ul>
        )}
        {mayEdit ? (
          <TakeInForm
            callId={callId}
            baseNumber={revisionNumber}
            open={corrections.filter(({ takenIn }) => takenIn === null).toReversed()}
          />
        ) : null}
        {mayEdit ? (
          <div className="mt-4">
            <CorrectionForm
              key={`${corrections[0]?.correctionId ?? "first"} ${JSON.stringify(asked)}`}
              formKey={randomUUID()}
              sizes={pattern.sizes.map(({ id, label }) => ({ id, label }))}
              counts={countNumbers(
                pattern,
                corrections.flatMap(({ numbers }) => numbers),
              )}
              chosen={asked.counts.filter((count) => pattern.counts.some(({ id }) => id === count))}
              changes={asked.changes}
              {...{ callId, places }}
            />
          </div>
        ) : (
          <p className="mt-4 text-soft">People who can edit this pattern can publish corrections.</p>
        )}
      </Section>
    </div>
  );
}

interface PublishedEntryProps {
  readonly correction: PublishedCorrection;
  readonly pattern: PatternDocument;
}

function PublishedEntry({ correction, pattern }: PublishedEntryProps) {
  const { text, places, numbers, sizes, author, createdAt, revisionNumber, groups, takenIn } = correction;
  const labels = sizes.map((size) => sizeLabel(pattern, size));
  return (
    <>
      <p dir="auto" className="whitespace-pre-line wrap-anywhere">
        {text}
      </p>
      <NumberChanges numbers={numbers} pattern={pattern} />
      {places.map((place) => (
        <p key={placeKey(place)} className="mt-1 text-soft wrap-anywhere">
          About “<bdi>{place.words}</bdi>”
        </p>
      ))}
      <p className="numbers mt-2 text-sm text-soft wrap-anywhere">
        <bdi>{author ?? "a former helper"}</bdi>, <Day at={createdAt} />, revision {revisionNumber},{" "}
        {labels.length === 0 ? (
          "all sizes"
        ) : (
          <bdi>{`${labels.length === 1 ? "size" : "sizes"} ${labels.join(", ")}`}</bdi>
        )}
      </p>
      <p className="numbers text-sm text-soft">
        {takenIn === null ? "Not in the pattern yet" : `In the pattern since revision ${takenIn}`}
      </p>
      <AnswerGroups groups={groups} />
    </>
  );
}
