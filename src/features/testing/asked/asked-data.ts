import "server-only";
import { parseField } from "@/engine/reporting";
import { callScope, type CallAccess } from "@/features/calls/access";
import { database } from "@/server/database";

/** What a designer asked about a number of a tester's report, and what came of it. */
export interface NumberQuestion {
  readonly questionId: string;
  /** The tester's field. */
  readonly field: string;
  /** What was typed there when it was asked. */
  readonly about: string;
  readonly asks: string;
  readonly askedAt: Date;
  /** That it is right, in the tester's words, which may be none; null while it is not answered so. */
  readonly answer: string | null;
  /** What they sent in its place. */
  readonly changedTo: string | null;
  readonly answeredAt: Date | null;
}

const NUMBER_QUESTION = {
  ...{ id: true, field: true, about: true, asks: true, createdAt: true },
  ...{ answer: true, changedTo: true, answeredAt: true },
} as const;

interface QuestionRow extends Omit<NumberQuestion, "questionId" | "askedAt"> {
  readonly id: string;
  readonly createdAt: Date;
}

export function toNumberQuestion({ id, createdAt, ...row }: QuestionRow): NumberQuestion {
  return { ...row, questionId: id, askedAt: createdAt };
}

/** Questions that a tester's page shows to them: those that wait, and those whose answer nobody has read yet. */
export const SHOWN_TO_TESTER = {
  where: { seenAt: null },
  orderBy: [{ createdAt: "asc" as const }, { id: "asc" as const }],
  select: NUMBER_QUESTION,
};

/** All questions about numbers of one tester's report, the newest first, and which answers were read. */
export async function questionsAboutNumbers(
  access: CallAccess,
  testerId: string,
): Promise<(NumberQuestion & { readonly isSeen: boolean })[]> {
  const rows = await database().numberQuestion.findMany({
    where: { testerId, tester: { call: callScope(access) } },
    orderBy: [{ createdAt: "desc" }, { id: "asc" }],
    select: { ...NUMBER_QUESTION, seenAt: true },
  });
  return rows.map(({ seenAt, ...row }) => ({ ...toNumberQuestion(row), isSeen: seenAt !== null }));
}

/** A measurement about which a tester has a question that they have not answered. */
interface AskedMeasurement {
  readonly testerId: string;
  readonly measurement: string;
  readonly askedAt: Date;
}

/** All such of a call. */
export async function askedMeasurements(access: CallAccess): Promise<AskedMeasurement[]> {
  const rows = await database().numberQuestion.findMany({
    where: { answeredAt: null, tester: { call: callScope(access) } },
    orderBy: { createdAt: "asc" },
    select: { testerId: true, field: true, createdAt: true },
  });
  return rows.flatMap(({ testerId, field: name, createdAt: askedAt }) => {
    const field = parseField(name);
    return field?.kind === "reading" ? [{ testerId, measurement: field.id, askedAt }] : [];
  });
}

/** Those of some testers of a call who can be asked about their report. */
export async function askableTesters(access: CallAccess, testerIds: readonly string[]): Promise<ReadonlySet<string>> {
  const rows = await database().tester.findMany({
    where: {
      ...{ id: { in: [...testerIds] }, call: callScope(access), acceptedAt: { not: null }, stoppedAt: null },
      reportedAt: { not: null },
    },
    select: { id: true },
  });
  return new Set(rows.map(({ id }) => id));
}
