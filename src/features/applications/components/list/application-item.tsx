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
    <li>
      <div>
        <h3>
          <Link href={href} prefetch={false}>
            <bdi>{name}</bdi>
          </Link>
        </h3>
        {tester === null ? null : (
          <p>
            <b>{capital(placeWords(tester.state, sizeLabel(shown.pattern, tester.size)))}.</b>
          </p>
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
      <p>
        <b>{fitSentence(application)}</b> {capital(bodyWords(measurements ?? {}, shown))}
        {document.forAnother ? ", somebody else’s" : null}.
      </p>
      <p>Would make {wishWords(application, shown.pattern)}.</p>
      <p className="work">
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
