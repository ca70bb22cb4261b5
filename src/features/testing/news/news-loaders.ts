import "server-only";
import { correctionsFor, type Correction } from "../corrections/correction-data";
import type { LoadedTester } from "../home/loaders";
import { newAnswers, newerRevision, type NewAnswer, type NewerRevision } from "./news-data";

/** What the designer published that a tester has not read yet. */
export interface TesterNews {
  readonly corrections: readonly Correction[];
  readonly answers: readonly NewAnswer[];
  /** Read or not: it stays on the page for who may still move to it. */
  readonly revision: NewerRevision | null;
}

export async function loadNews({ access, tester }: Pick<LoadedTester, "access" | "tester">): Promise<TesterNews> {
  const [corrections, answers, revision] = await Promise.all([
    correctionsFor(access, { size: tester.size.id, unread: true }),
    newAnswers(access),
    newerRevision(access, tester.revision.number),
  ]);
  return { corrections, answers, revision };
}
