import Link from "next/link";
import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import type { ListedApplication } from "../../application-board";
import { SHORT_EXPERIENCE, TERMS_WORDS, WORD_WORDS } from "../../apply-words";
import { bodyWords, fitSentence, wishWords } from "../../fit-words";
import { placeWords } from "../../place-words";
import { sizeLabel } from "../own/kept-list";
import { WordButtons } from "./word-buttons";

export interface ListShown {
  readonly callId: string;
  readonly pattern: PatternDocument;
  readonly unit: LengthUnit;
  /** She may decide, not only look. */
  readonly mayDecide: boolean;
}

interface ApplicationItemProps {
  readonly application: ListedApplication;
  readonly href: string;
  readonly shown: ListShown;
}

/** One application of the list: who, how the body fits, what she would make, and the designer's word. */
export function ApplicationItem({ application, href, shown }: ApplicationItemProps) {
  const { name, withdrawnAt, tester } = application;
  return (
    <li className="flex flex-wrap items-start justify-between gap-x-8 gap-y-3 border-b border-line px-5 py-4 last:border-b-0">
      <div className="min-w-0 flex-1 basis-80">
        <h3 className="line-clamp-2 wrap-anywhere">
          <Link href={href} prefetch={false} className="text-link">
            <bdi>{name}</bdi>
          </Link>
        </h3>
        {tester === null ? null : (
          <p className="font-semibold">{capital(placeWords(tester.state, sizeLabel(shown.pattern, tester.size)))}.</p>
        )}
        {withdrawnAt === null ? (
          <ApplicationLines application={application} shown={shown} />
        ) : (
          <p className="text-soft">Withdrawn: the measurements are not shown any more.</p>
        )}
      </div>
      {withdrawnAt === null ? <Word application={application} shown={shown} /> : null}
    </li>
  );
}

function ApplicationLines({ application, shown }: Pick<ApplicationItemProps, "application" | "shown">) {
  const { measurements, document } = application;
  const works = [SHORT_EXPERIENCE[document.experience], `${TERMS_WORDS[document.terms]} names`, document.unit];
  return (
    <>
      <p className="numbers">
        <span className="font-semibold">{fitSentence(application)}</span>{" "}
        {capital(bodyWords(measurements ?? {}, shown))}
        {document.forAnother ? ", somebody else’s" : null}.
      </p>
      <p className="wrap-anywhere">Would make {wishWords(application, shown.pattern)}.</p>
      <p className="line-clamp-2 text-sm text-soft wrap-anywhere">
        {capital(works.join(", "))}
        {document.yarn ? <> · {document.yarn}</> : null}
        {document.tool ? <> · {document.tool}</> : null}
      </p>
    </>
  );
}

/** The designer's word, to say or only to read. */
export function Word({ application, shown }: Pick<ApplicationItemProps, "application" | "shown">) {
  const { applicationId, name, word } = application;
  if (shown.mayDecide) return <WordButtons callId={shown.callId} {...{ applicationId, name, word }} />;
  return <p className="font-semibold">{WORD_WORDS[word ?? "undecided"]}</p>;
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
