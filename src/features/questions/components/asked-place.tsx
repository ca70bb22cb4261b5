import type { PatternDocument } from "@/engine/pattern";
import { FoldedRest } from "@/ui/folded-rest";
import { Sheet } from "@/ui/sheet";
import type { AnswerThread } from "../answer-threads";
import type { CallQuestion } from "../data";
import type { PlaceGroup } from "../group-by-place";
import { AnswerForm } from "./answer-form";
import { QuotedPlace } from "./quoted-place";
import { SaidBy } from "./said-by";

interface AskedPlaceProps {
  readonly group: PlaceGroup<CallQuestion>;
  readonly waiting: readonly CallQuestion[];
  readonly threads: readonly AnswerThread[];
  readonly pattern: PatternDocument;
  readonly callId: string;
  readonly mayEdit: boolean;
}

/** Of more at one place the rest is folded, so that the answer stays in sight. */
const MOST_SHOWN = 5;

/** A place of the text with all that was asked of it; one answer serves whoever waits there. */
export function AskedPlace({ group, waiting, threads, pattern, callId, mayEdit }: AskedPlaceProps) {
  const [first] = group.said;
  if (first === undefined) return null;
  const was = { words: first.place.words, revisionNumber: first.revisionNumber };
  return (
    <Sheet>
      <div className="grid grid-cols-1 gap-x-10 gap-y-6 lg:grid-cols-[minmax(0,2fr)_minmax(0,3fr)]">
        <QuotedPlace text={pattern.instructions ?? ""} block={group.block} was={was} />
        <div className="grid content-start gap-6">
          {threads.map((thread) => (
            <Answered key={thread.answeredAt.toISOString()} {...{ thread, pattern, callId, mayEdit }} />
          ))}
          {waiting.length > 0 ? (
            <div>
              <Asked questions={waiting} pattern={pattern} />
              {mayEdit ? (
                <AnswerForm callId={callId} questions={waiting} before={null} />
              ) : (
                <p className="mt-3 text-soft">Whoever may edit this pattern can answer.</p>
              )}
            </div>
          ) : null}
        </div>
      </div>
    </Sheet>
  );
}

function Answered({
  thread,
  pattern,
  callId,
  mayEdit,
}: Pick<AskedPlaceProps, "pattern" | "callId" | "mayEdit"> & { readonly thread: AnswerThread }) {
  const { answer, answeredBy, questions } = thread;
  return (
    <div>
      <Asked questions={questions} pattern={pattern} />
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
            <AnswerForm key={thread.answeredAt.toISOString()} callId={callId} questions={questions} before={thread} />
          </div>
        </details>
      ) : null}
    </div>
  );
}

function Asked({
  questions,
  pattern,
}: Pick<AskedPlaceProps, "pattern"> & { readonly questions: readonly CallQuestion[] }) {
  return (
    <FoldedRest
      className="grid gap-3"
      shown={MOST_SHOWN}
      of="questions"
      items={questions.map((question) => (
        <li key={question.questionId}>
          <p dir="auto" className="whitespace-pre-line wrap-anywhere">
            {question.asks}
          </p>
          <SaidBy said={question} pattern={pattern} />
        </li>
      ))}
    />
  );
}
