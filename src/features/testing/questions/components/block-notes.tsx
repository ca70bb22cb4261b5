import type { ReactNode } from "react";
import type { OwnTrouble, ReadQuestion } from "../data";
import { TakeBackButton } from "./take-back-button";
import { TroublePhotos, type AddingPhotos } from "./trouble-photos";

interface BlockNotesProps {
  readonly questions: readonly ReadQuestion[];
  readonly troubles: readonly OwnTrouble[];
  readonly testerId: string;
  /** The photos that may be added to trouble spots; null where none may. */
  readonly adding: AddingPhotos | null;
}

/** Questions and answers about a passage, and the reader's own trouble spots. */
export function BlockNotes({ questions, troubles, testerId, adding }: BlockNotesProps) {
  if (questions.length + troubles.length === 0) return null;
  return (
    <ul className="mt-3 grid max-w-2xl gap-3">
      {questions.map((question) => (
        <Note key={question.questionId} sign="?">
          <Asked question={question} testerId={testerId} />
        </Note>
      ))}
      {troubles.map(({ troubleId, happened, did, photos }) => (
        <Note key={troubleId} sign="!">
          <Words label="You reported:" text={happened} />
          {did === "" ? null : <Words label="What you did:" text={did} />}
          <TakeBackButton {...{ testerId, what: "trouble", id: troubleId, name: happened }} />
          <TroublePhotos {...{ testerId, troubleId, happened, photos, adding }} />
        </Note>
      ))}
    </ul>
  );
}

/** What corrections say about a passage. */
export function CorrectionNotes({ texts }: { readonly texts: readonly string[] }) {
  if (texts.length === 0) return null;
  return (
    <ul className="mt-3 grid max-w-2xl gap-3">
      {texts.map((text, index) => (
        <Note key={index} sign="✎">
          <Words label="Corrected:" text={text} />
        </Note>
      ))}
    </ul>
  );
}

function Asked({ question, testerId }: { readonly question: ReadQuestion; readonly testerId: string }) {
  const { questionId, asks, answer, isOwn } = question;
  return (
    <>
      <Words label={isOwn ? "You asked:" : "Asked:"} text={asks} />
      {answer === null ? (
        <>
          <p className="text-sm text-soft">Waiting for an answer, which all testers will see here.</p>
          <TakeBackButton {...{ testerId, what: "question", id: questionId, name: asks }} />
        </>
      ) : (
        <Words label="Answer:" text={answer} isStrong />
      )}
    </>
  );
}

function Note({ sign, children }: { readonly sign: string; readonly children: ReactNode }) {
  return (
    <li className="flex gap-3 rounded-md border border-line-strong bg-sheet px-3 py-2.5">
      <span
        aria-hidden="true"
        className="mt-0.5 flex size-6 shrink-0 items-center justify-center rounded-full border border-ink text-sm font-bold"
      >
        {sign}
      </span>
      <div className="grid min-w-0 gap-1.5">{children}</div>
    </li>
  );
}

interface WordsProps {
  readonly label: string;
  readonly text: string;
  readonly isStrong?: boolean;
}

function Words({ label, text, isStrong = false }: WordsProps) {
  return (
    <div>
      <p className="text-sm text-soft">{label}</p>
      <p dir="auto" className={`whitespace-pre-line wrap-anywhere ${isStrong ? "font-semibold" : ""}`}>
        {text}
      </p>
    </div>
  );
}
