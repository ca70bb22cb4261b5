import type { CallQuestion } from "./data";

/** An answer and the questions that it serves. */
export interface AnswerThread {
  readonly answer: string;
  readonly answeredAt: Date;
  readonly answeredBy: string | null;
  readonly questions: readonly CallQuestion[];
}

/** What is asked of one place: what still waits, and each answer that was given, the earliest first. */
export function answerThreads(questions: readonly CallQuestion[]): {
  readonly waiting: readonly CallQuestion[];
  readonly threads: readonly AnswerThread[];
} {
  const threads = new Map<string, AnswerThread>();
  for (const question of questions) {
    const { answer, answeredAt, answeredBy } = question;
    if (answer === null || answeredAt === null) continue;
    const key = `${answeredAt.toISOString()} ${answer}`;
    const others = threads.get(key)?.questions ?? [];
    threads.set(key, { answer, answeredAt, answeredBy, questions: [...others, question] });
  }
  return {
    waiting: questions.filter(({ answer }) => answer === null),
    threads: [...threads.values()].toSorted((left, right) => left.answeredAt.getTime() - right.answeredAt.getTime()),
  };
}
