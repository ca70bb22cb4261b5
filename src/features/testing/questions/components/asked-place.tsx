import type { PatternDocument } from "@/engine/pattern";
import { Sheet } from "@/ui/sheet";
import type { AskedPlaces, QuestionThread } from "../place-notes-data";
import { AnswerForm } from "./answer-form";
import { MoreNotes } from "./more-notes";
import { QuotedPlace } from "./quoted-place";
import { NoteAuthor } from "./note-author";

interface AskedPlaceProps {
  readonly place: AskedPlaces["places"][number];
  readonly pattern: PatternDocument;
  readonly callId: string;
  readonly mayEdit: boolean;
  /** The page with everything about the passage; null if this is that page. */
  readonly allHref: string | null;
}

/** A passage with its questions; one answer serves everybody who is waiting. */
export function AskedPlace({ place, ...asked }: AskedPlaceProps) {
  const { block, notes, threads } = place;
  const [first] = notes;
  if (first === undefined) return null;
  const was = { words: first.place.words, revisionNumber: first.revisionNumber };
  return (
    <Sheet>
      <div className="grid grid-cols-1 gap-x-10 gap-y-6 lg:grid-cols-[minmax(0,2fr)_minmax(0,3fr)]">
        <QuotedPlace text={asked.pattern.instructions ?? ""} block={block} was={was} />
        <div className="grid content-start gap-6">
          {threads.map((thread) => (
            <Thread key={thread.answeredAt?.toISOString() ?? "waiting"} {...{ thread, ...asked }} />
          ))}
        </div>
      </div>
    </Sheet>
  );
}

interface ThreadProps extends Omit<AskedPlaceProps, "place"> {
  readonly thread: QuestionThread;
}

function Thread({ thread, pattern, callId, mayEdit, allHref }: ThreadProps) {
  const { answer, answeredBy, many, shown } = thread;
  return (
    <div>
      <ul className="grid gap-3">
        {shown.map((question) => (
          <li key={question.id}>
            <p dir="auto" className="whitespace-pre-line wrap-anywhere">
              {question.asks}
            </p>
            <NoteAuthor note={question} pattern={pattern} />
          </li>
        ))}
      </ul>
      <MoreNotes href={allHref} many={many} shown={shown.length} of="questions" />
      {answer === null ? (
        mayEdit ? (
          <AnswerForm {...{ callId, thread }} />
        ) : (
          <p className="mt-3 text-soft">People who can edit this pattern can answer.</p>
        )
      ) : (
        <>
          <p className="mt-3 text-sm text-soft">
            Answered{answeredBy === null ? "" : " by "}
            <bdi>{answeredBy}</bdi>:
          </p>
          <p dir="auto" className="whitespace-pre-line font-semibold wrap-anywhere">
            {answer}
          </p>
          {mayEdit ? (
            <details className="mt-1">
              <summary className="text-link inline-flex min-h-9 items-center text-sm">Change the answer</summary>
              <div className="mt-2">
                <AnswerForm key={thread.answeredAt?.toISOString()} {...{ callId, thread }} />
              </div>
            </details>
          ) : null}
        </>
      )}
    </div>
  );
}
