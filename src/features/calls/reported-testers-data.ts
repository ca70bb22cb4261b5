import "server-only";
import { z } from "zod";
import { testerSchema, type Tester } from "@/engine/pattern";
import type { LeftOut } from "@/engine/results";
import { applyInstructionErrors, instructionErrorSchema, type InstructionError } from "@/engine/revision";
import type { Prisma } from "@/generated/prisma/client";
import type { Connection } from "@/server/transaction";
import { callScope, type CallAccess } from "./access";
import { ANSWERS } from "./answer-data";
import { applyAnswers } from "./answers-computed";
import { readDecision, testerDocument } from "./report-schema";

export interface ReportedTester {
  readonly tester: Tester;
  /** The revision that their report followed. */
  readonly revisionId: string;
}

interface ReportedTesters {
  readonly reported: readonly ReportedTester[];
  readonly leftOut: readonly LeftOut[];
}

interface Asked {
  /** An error in the instructions, of reports up to a revision. */
  readonly instructionErrors: readonly (InstructionError & { readonly until: number })[];
  /** A tester's id in the document. */
  readonly idOf: (row: { readonly id: string; readonly code: string }) => string;
}

/** Every tester's newest report, with the decisions on it and the counts that they really worked. */
export async function reportedTesters(
  access: CallAccess,
  connection: Connection,
  { instructionErrors, idOf }: Asked,
): Promise<ReportedTesters> {
  const rows = await connection.tester.findMany({
    where: { call: callScope(access) },
    orderBy: { position: "asc" },
    select: {
      ...{ id: true, code: true },
      body: { select: { measurements: true } },
      correctionAnswers: ANSWERS,
      reports: {
        orderBy: { version: "desc" },
        take: 1,
        select: {
          document: true,
          createdAt: true,
          decisions: { select: { part: true, position: true, decision: true, usedCm: true } },
          revision: { select: { id: true, number: true } },
        },
      },
    },
  });
  const leftOut: LeftOut[] = [];
  const reported = rows.flatMap(({ id, code, body, correctionAnswers, reports: [report] }) => {
    if (report === undefined) return [];
    const person = { id: idOf({ id, code }), ...(body ? { body: body.measurements } : {}) };
    const stored = testerSchema.safeParse({ ...Object(report.document), ...person });
    if (!stored.success) {
      const [issue] = stored.error.issues;
      leftOut.push({ tester: person.id, message: `${issue?.path.join(".") ?? ""}: ${issue?.message ?? ""}` });
      return [];
    }
    const decisions = report.decisions.map(({ decision, usedCm, ...at }) => ({
      ...at,
      decision: readDecision({ decision, usedCm }),
    }));
    const until = instructionErrors.filter((wrong) => report.revision.number <= wrong.until);
    const answered = applyAnswers(testerDocument(stored.data, decisions), correctionAnswers, report.createdAt);
    const worked = answered.worked && applyInstructionErrors(answered.worked, answered, until);
    const tester = { ...answered, ...(worked === undefined ? {} : { worked }) };
    return [{ tester, revisionId: report.revision.id }];
  });
  return { reported, leftOut };
}

/** Errors in the instructions known from revisions made from plans of this call, up to the revision that they changed. */
export async function instructionErrorsOf(
  access: CallAccess,
  connection: Connection,
): Promise<Asked["instructionErrors"]> {
  return toInstructionErrors(
    await connection.revisionEvidence.findMany({ where: { call: callScope(access) }, ...EVIDENCE }),
  );
}

/** The columns of a revision's evidence that `toInstructionErrors` reads. */
export const EVIDENCE = {
  select: { instructionErrors: true, revision: { select: { number: true } } },
} satisfies Prisma.RevisionEvidenceDefaultArgs;

export function toInstructionErrors(
  rows: readonly Prisma.RevisionEvidenceGetPayload<typeof EVIDENCE>[],
): Asked["instructionErrors"] {
  return rows.flatMap(({ instructionErrors, revision }) =>
    z
      .array(instructionErrorSchema)
      .parse(instructionErrors)
      .map((wrong) => ({ ...wrong, until: revision.number - 1 })),
  );
}
