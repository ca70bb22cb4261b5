import "server-only";
import { correctionsFor, type TesterCorrection } from "../corrections/correction-data";
import { mayAnswer } from "../corrections/may-answer";
import { isOpenFor } from "../corrections/own-answer";
import type { LoadedTester } from "../home/loaders";
import { newAnswers, newerRevision, type NewAnswer, type NewerRevision } from "./news-data";

/** What the designer published that a tester has not read yet. */
export interface TesterNews {
  /** Those that ask for an answer, and of others those that they have not read. */
  readonly corrections: readonly TesterCorrection[];
  /** Those that they have answered; they may change it until all of their report is sent. */
  readonly answered: readonly TesterCorrection[];
  readonly answers: readonly NewAnswer[];
  /** Read or not: it stays on the page for who may still move to it. */
  readonly revision: NewerRevision | null;
}

export async function loadNews(loaded: LoadedTester): Promise<TesterNews> {
  const { access, tester } = loaded;
  const [all, answers, revision] = await Promise.all([
    correctionsFor(access, { size: tester.size.id }),
    newAnswers(access),
    newerRevision(access, tester.revision.number),
  ]);
  const isNews = (correction: TesterCorrection) =>
    isOpenFor(correction, loaded) || (correction.answer === null && !correction.isRead && !mayAnswer(loaded.inHand));
  return {
    corrections: all.filter(isNews),
    answered: all.filter((correction) => correction.answer !== null && !isNews(correction)),
    answers,
    revision,
  };
}
