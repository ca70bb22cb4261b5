import type { ReactNode } from "react";
import type { LoadedTester } from "../home/loaders";
import { dayIn } from "../home/due-copy";
import { AskedNews } from "../asked/asked-news";
import { isOpenFor, OwnAnswer } from "../corrections/own-answer";
import { CorrectionText } from "./correction-text";
import { GotIt } from "./got-it";
import type { NewAnswer } from "./news-data";
import type { TesterNews } from "./news-loaders";
import { PlaceLink } from "./place-link";
import { RevisionNews } from "./revision-news";

interface NewsListProps {
  readonly news: TesterNews;
  readonly loaded: LoadedTester;
  /** What the newer revision changes in their size. */
  readonly differences: ReactNode;
}

/** What the designer published since the tester last looked, each item until they have read it. */
export function NewsList({ news, loaded, differences }: NewsListProps) {
  const { tester } = loaded;
  const { corrections, answers } = news;
  const asked = loaded.inHand.ended === null ? loaded.inHand.asked.filter(({ answeredAt }) => answeredAt === null) : [];
  const revision = news.revision?.isRead === false ? news.revision : null;
  const own = answers.filter(({ isOwn }) => isOwn);
  const others = answers.filter(({ isOwn }) => !isOwn);
  if (asked.length + corrections.length + answers.length === 0 && revision === null) return null;
  return (
    <section
      aria-labelledby="new-for-you"
      className="mb-10 rounded-sheet border border-line border-l-4 border-l-thread bg-sheet shadow-sheet"
    >
      <h2 id="new-for-you" className="border-b border-line px-5 py-3 text-xl">
        New for you
      </h2>
      <ul>
        {asked.map((question) => (
          <NewsItem key={question.questionId}>
            <AskedNews {...{ question, loaded }} />
          </NewsItem>
        ))}
        {corrections.map((correction) => (
          <NewsItem key={correction.correctionId}>
            <CorrectionText {...{ correction, tester }} />
            {isOpenFor(correction, loaded) ? (
              <OwnAnswer {...{ correction, loaded }} />
            ) : (
              <GotIt
                testerId={tester.testerId}
                mark={{ what: "correction", correctionId: correction.correctionId }}
                about={`the correction “${correction.text.slice(0, 60)}”`}
              />
            )}
          </NewsItem>
        ))}
        {own.map((answer) => (
          <NewsItem key={answer.questionId}>
            <AnswerText {...{ answer, tester }} />
            <AnswersRead testerId={tester.testerId} answers={[answer]} />
          </NewsItem>
        ))}
        {revision === null ? null : (
          <NewsItem>
            <RevisionNews {...{ revision, loaded, differences }} />
            <GotIt
              testerId={tester.testerId}
              mark={{ what: "revision", number: revision.number }}
              about={`revision ${revision.number}`}
            />
          </NewsItem>
        )}
        {others.length === 0 ? null : <OthersAnswers {...{ others, tester }} />}
      </ul>
    </section>
  );
}

function NewsItem({ children }: { readonly children: ReactNode }) {
  return <li className="border-b border-line px-5 py-4 last:border-b-0 [&>form]:mt-3">{children}</li>;
}

interface AnswerTextProps {
  readonly answer: NewAnswer;
  readonly tester: LoadedTester["tester"];
}

function AnswerText({ answer: { asks, answer, answeredAt, place, isOwn }, tester }: AnswerTextProps) {
  return (
    <>
      <p className="numbers text-sm text-soft">
        <span className="font-semibold text-ink">{isOwn ? "Your question is answered" : "Answered"}</span>,{" "}
        {dayIn(answeredAt, tester.timeZone)}
      </p>
      <p dir="auto" className="mt-1 line-clamp-3 whitespace-pre-line text-soft wrap-anywhere">
        {asks}
      </p>
      <p dir="auto" className="mt-1 whitespace-pre-line text-lg leading-snug wrap-anywhere">
        {answer}
      </p>
      <div className="mt-1 wrap-anywhere">
        <PlaceLink testerId={tester.testerId} text={tester.revision.document.instructions ?? ""} place={place} />
      </div>
    </>
  );
}

function AnswersRead({ testerId, answers }: { readonly testerId: string; readonly answers: readonly NewAnswer[] }) {
  const seen = answers.map(({ questionId, answeredAt }) => ({ questionId, answeredAt: answeredAt.toISOString() }));
  const [first] = answers;
  if (first === undefined) return null;
  const isOne = answers.length === 1;
  return (
    <GotIt
      testerId={testerId}
      mark={{ what: "answers", answers: seen }}
      about={isOne ? `the answer to “${first.asks.slice(0, 60)}”` : "the answers to other testers"}
      {...(isOne ? {} : { button: `Got it, all ${answers.length}` })}
    />
  );
}

interface OthersAnswersProps {
  readonly others: readonly NewAnswer[];
  readonly tester: LoadedTester["tester"];
}

/** Less urgent than what was said to the tester themselves, so it is folded. */
function OthersAnswers({ others, tester }: OthersAnswersProps) {
  const many = others.length === 1 ? "1 answer" : `${others.length} answers`;
  return (
    <NewsItem>
      <details>
        <summary className="text-link inline-flex min-h-9 items-center">{many} to other testers of your size</summary>
        <ul className="mt-2 mb-3 grid gap-4">
          {others.map((answer) => (
            <li key={answer.questionId}>
              <AnswerText {...{ answer, tester }} />
            </li>
          ))}
        </ul>
        <AnswersRead testerId={tester.testerId} answers={others} />
      </details>
    </NewsItem>
  );
}
