import "server-only";
import { z } from "zod";
import { differencesSchema, type Differences } from "@/engine/results";
import { causeShape, rivalShape } from "@/engine/gaps";
import {
  acceptedProposalSchema,
  instructionErrorSchema,
  type AcceptedProposal,
  type InstructionError,
} from "@/engine/revision";
import { callScope, type CallAccess } from "@/features/calls/access";
import { patternScope, type PatternAccess } from "@/features/patterns/access";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { planRequestSchema, readPlanOutput, type PlanOutput, type PlanRequest } from "./plan-schema";

export interface StoredPlan {
  readonly planId: string;
  readonly request: PlanRequest;
  /** The revision that it changes. */
  readonly baseNumber: number;
  /** The version of the call that it is based on. */
  readonly callVersion: number;
  /** The results of that version. */
  readonly differences: Differences;
  /** Null while it is being calculated. */
  readonly output: PlanOutput | null;
}

/** A plan of this call. @throws {AppError} "not-found" */
export async function storedPlan(access: CallAccess, planId: string): Promise<StoredPlan> {
  if (!z.uuid().safeParse(planId).success) throw new AppError("not-found");
  const row = await database().plan.findFirst({
    where: { id: planId, call: callScope(access) },
    select: { id: true, request: true, baseNumber: true, callVersion: true, differences: true, output: true },
  });
  if (row === null) throw new AppError("not-found");
  return {
    planId: row.id,
    request: planRequestSchema.parse(row.request),
    baseNumber: row.baseNumber,
    callVersion: row.callVersion,
    differences: differencesSchema.parse(row.differences),
    output: row.output === null ? null : readPlanOutput(row.output),
  };
}

/** Whether a plan has been calculated. @throws {AppError} "not-found" */
export async function isPlanDone(access: CallAccess, planId: string): Promise<boolean> {
  if (!z.uuid().safeParse(planId).success) throw new AppError("not-found");
  const where = { id: planId, call: callScope(access) };
  const rows = await database().plan.groupBy({ by: ["id"], where, _count: { output: true } });
  const [row] = rows;
  if (row === undefined) throw new AppError("not-found");
  return row._count.output > 0;
}

/** An analysis as stored with evidence, whichever engine version wrote it. */
const evidenceSchema = z.object({
  causes: z.array(z.object({ ...causeShape, rivals: z.array(z.object(rivalShape)) })),
  testers: z.array(z.unknown()).optional(),
  testersBySize: z.array(z.int()).optional(),
});

export type EvidenceCauses = z.infer<typeof evidenceSchema>["causes"];

/** The evidence for a revision made from a plan, frozen when it was saved. */
export interface Evidence {
  readonly take: readonly AcceptedProposal[];
  readonly causes: EvidenceCauses;
  /** How many testers had reported. */
  readonly testers: number;
  /** Errors in the instructions: counts that testers worked without knowing, and which are added to their reports since. */
  readonly instructionErrors: readonly InstructionError[];
  /** Null where the call is gone. */
  readonly call: { readonly callId: string; readonly title: string } | null;
}

/** The evidence for a revision; null where it was not made from a plan. */
export async function revisionEvidence(access: PatternAccess, number: number): Promise<Evidence | null> {
  const row = await database().revisionEvidence.findFirst({
    where: { revision: { number, pattern: patternScope(access) } },
    select: { take: true, analysis: true, instructionErrors: true, call: { select: { id: true, title: true } } },
  });
  if (row === null) return null;
  const { causes, testers, testersBySize = [] } = evidenceSchema.parse(JSON.parse(row.analysis));
  return {
    take: z.array(acceptedProposalSchema).parse(row.take),
    causes,
    testers: testers?.length ?? testersBySize.reduce((sum, count) => sum + count, 0),
    instructionErrors: z.array(instructionErrorSchema).parse(row.instructionErrors),
    call: row.call && { callId: row.call.id, title: row.call.title },
  };
}
