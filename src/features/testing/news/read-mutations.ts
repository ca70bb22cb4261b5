import "server-only";
import { testerScope, type TesterAccess } from "@/features/testing/home/access";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { inTransaction } from "@/server/transaction";

/** Marks a correction as read by a tester. @throws {AppError} "not-found" if their call has no such correction. */
export async function markCorrectionRead(access: TesterAccess, correctionId: string): Promise<void> {
  const { testerId } = access;
  await inTransaction(async ({ correction, correctionRead }) => {
    const ofCall = { id: correctionId, call: { testers: { some: testerScope(access) } } };
    if ((await correction.count({ where: ofCall })) === 0) throw new AppError("not-found");
    await correctionRead.createMany({ data: { testerId, correctionId }, skipDuplicates: true });
  });
}

/** An answer, named by the moment at which it was given. */
export interface SeenAnswer {
  readonly questionId: string;
  readonly answeredAt: Date;
}

/** Marks answers as read by a tester, as they stood on the page. Questions of other calls are ignored. */
export async function markAnswersRead(access: TesterAccess, seen: readonly SeenAnswer[]): Promise<void> {
  const { testerId } = access;
  await inTransaction(async ({ question, answerRead }) => {
    const rows = await question.findMany({
      where: {
        id: { in: seen.map(({ questionId }) => questionId) },
        answer: { not: null },
        call: { testers: { some: testerScope(access) } },
      },
      select: { id: true },
    });
    const known = new Set(rows.map(({ id }) => id));
    await answerRead.deleteMany({ where: { tester: testerScope(access), questionId: { in: [...known] } } });
    await answerRead.createMany({
      data: seen.flatMap(({ questionId, answeredAt }) =>
        known.has(questionId) ? [{ testerId, questionId, answeredAt }] : [],
      ),
      skipDuplicates: true,
    });
  });
}

/** Marks a revision of their pattern as read by a tester; a later one is new to them again. */
export async function markRevisionRead(access: TesterAccess, number: number): Promise<void> {
  await database().tester.updateMany({
    where: {
      ...testerScope(access),
      call: { pattern: { revisions: { some: { number } } } },
      OR: [{ readRevisionNumber: null }, { readRevisionNumber: { lt: number } }],
    },
    data: { readRevisionNumber: number },
  });
}
