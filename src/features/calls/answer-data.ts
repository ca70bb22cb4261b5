import "server-only";
import type { Prisma } from "@/generated/prisma/client";

/** A tester's answers to corrections, in the order in which these were published, as `toAnswers` reads them. */
export const ANSWERS = {
  orderBy: [
    { correction: { createdAt: "asc" } },
    { correctionId: "asc" },
  ] satisfies Prisma.CorrectionAnswerOrderByWithRelationInput[],
  select: { answer: true, worked: true, answeredAt: true, correction: { select: { numbers: true } } },
} satisfies Prisma.Tester$correctionAnswersArgs;
