import Link from "next/link";
import type { ReactNode } from "react";
import type { NextQuestion } from "@/engine/gaps";
import type { PatternDocument } from "@/engine/pattern";
import { callPageHref, testerPageHref } from "@/features/calls/call-pages";
import { ButtonLink } from "@/ui/button";
import { Section } from "@/ui/section";
import type { Asking } from "../asking";
import { nextQuestionSentence, settlesWords } from "./next-question-copy";

interface NextQuestionsProps {
  readonly questions: readonly NextQuestion[];
  readonly pattern: PatternDocument;
  readonly callId: string;
  /** Of testers, by their ids in the analysis. */
  readonly names: ReadonlyMap<string, string>;
  /** Ids of the call's own testers; those of an earlier test have none here. */
  readonly ids: ReadonlyMap<string, string>;
  readonly asking: Asking;
}

/** The few questions that would settle most of what is open, with where each is asked. */
export function NextQuestions({ questions, pattern, callId, names, ids, asking }: NextQuestionsProps) {
  if (questions.length === 0) return null;
  return (
    <Section
      title="What to ask next"
      actions={
        <Link href={callPageHref(callId, "method")} className="text-link text-sm">
          How this is worked out
        </Link>
      }
    >
      <p className="max-w-prose text-soft">
        Where more data would help most, and how many verdicts each would settle on average.
      </p>
      <ol className="mt-3 divide-y divide-line border-y border-line">
        {questions.map((question) => {
          const sentence = nextQuestionSentence(question, { pattern, names });
          const button = askedHere(question, asking);
          const to = whereAsked(question, callId, ids);
          return (
            <li
              key={sentence}
              className="numbers flex flex-wrap items-center justify-between gap-x-6 gap-y-1 py-2 wrap-anywhere"
            >
              <p className="min-w-0">
                {sentence} <span className="text-sm text-soft">{settlesWords(question)}</span>
              </p>
              {button ??
                (to === null ? null : (
                  <ButtonLink look="quiet" href={to.href}>
                    {to.name}
                  </ButtonLink>
                ))}
            </li>
          );
        })}
      </ol>
    </Section>
  );
}

function askedHere({ action, tester, measurement }: NextQuestion, asking: Asking): ReactNode {
  if ((action !== "measure-again" && action !== "measure") || tester === undefined || measurement === undefined)
    return null;
  return asking({ tester, measurement, what: action });
}

/** The page where it is asked or done, if that is not here. */
function whereAsked(
  { action, tester }: NextQuestion,
  callId: string,
  ids: ReadonlyMap<string, string>,
): { readonly href: string; readonly name: string } | null {
  switch (action) {
    case "measure-again":
    case "measure": {
      const testerId = ids.get(tester ?? "");
      return testerId === undefined ? null : { href: testerPageHref(callId, testerId), name: "See their report" };
    }
    case "tester":
      return { href: callPageHref(callId, "sizes"), name: "Find a tester" };
    case "input":
      return { href: callPageHref(callId, "changes"), name: "See the causes" };
  }
}
