import Link from "next/link";
import type { NextQuestion } from "@/engine/gaps";
import type { PatternDocument } from "@/engine/pattern";
import { callPageHref } from "@/features/calls/call-pages";
import { Section } from "@/ui/section";
import { nextQuestionSentence, settlesWords } from "./next-question-copy";

interface NextQuestionsProps {
  readonly questions: readonly NextQuestion[];
  readonly pattern: PatternDocument;
  readonly callId: string;
  /** Of testers, by their ids in the analysis. */
  readonly names: ReadonlyMap<string, string>;
  /** Addresses of their pages; those of an earlier test have none here. */
  readonly pages: ReadonlyMap<string, string>;
}

/** The few questions that would settle most of what is open, with where each is asked. */
export function NextQuestions({ questions, pattern, callId, names, pages }: NextQuestionsProps) {
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
        Where more data would help most. The numbers say how many differences each question settles by itself, on
        average.
      </p>
      <ol className="mt-3 divide-y divide-line border-y border-line">
        {questions.map((question) => {
          const sentence = nextQuestionSentence(question, { pattern, names });
          const href = whereAsked(question, callId, pages);
          return (
            <li
              key={sentence}
              className="numbers flex flex-wrap items-baseline justify-between gap-x-6 gap-y-0.5 py-2 wrap-anywhere"
            >
              {href === null ? (
                <span>{sentence}</span>
              ) : (
                <Link href={href} prefetch={false} className="text-link">
                  {sentence}
                </Link>
              )}
              <span className="text-sm text-soft">{settlesWords(question.settles)}</span>
            </li>
          );
        })}
      </ol>
    </Section>
  );
}

function whereAsked(
  { action, tester }: NextQuestion,
  callId: string,
  pages: ReadonlyMap<string, string>,
): string | null {
  switch (action) {
    case "measure-again":
    case "measure":
      return pages.get(tester ?? "") ?? null;
    case "tester":
      return callPageHref(callId, "sizes");
    case "input":
      return callPageHref(callId, "changes");
  }
}
