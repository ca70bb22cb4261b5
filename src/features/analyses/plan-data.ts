import "server-only";
import { z } from "zod";
import type { GapsOutput } from "@/engine/gaps";
import type { Taken } from "@/engine/revision";
import { callScope, type CallAccess } from "@/features/calls/access";
import { misworkedSchema, type Misworked } from "@/features/calls/schema";
import { patternScope, type PatternAccess } from "@/features/patterns/access";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import type { AnalysisInput } from "./analysis-input";
import { readPlanOutput, readTake, type PlanOutput } from "./plan-schema";
import { gapsOutputSchema } from "./schema";

export interface StoredPlan {
  readonly planId: string;
  readonly take: readonly Taken[];
  /** The revision that it changes. */
  readonly baseNumber: number;
  /** The analysis that it rests on. */
  readonly input: AnalysisInput;
  /** Null while it is being reckoned. */
  readonly output: PlanOutput | null;
}

/** A plan of this call. @throws {AppError} "not-found" */
export async function storedPlan(access: CallAccess, planId: string): Promise<StoredPlan> {
  if (!z.uuid().safeParse(planId).success) throw new AppError("not-found");
  const row = await database().plan.findFirst({
    where: { id: planId, call: callScope(access) },
    select: { id: true, take: true, baseNumber: true, inputHash: true, engineVersion: true, output: true },
  });
  if (row === null) throw new AppError("not-found");
  const output = row.output === null ? null : readPlanOutput(row.output);
  const { id, baseNumber, inputHash, engineVersion } = row;
  return { planId: id, take: readTake(row.take), baseNumber, input: { inputHash, engineVersion }, output };
}

/** What a revision rests on that was made from a plan, frozen when it was saved. */
export interface Evidence {
  readonly take: readonly Taken[];
  readonly analysis: GapsOutput;
  /** Counts that the call's testers are since taken to have worked otherwise than they said. */
  readonly misworked: Misworked;
  /** Null where the call is gone. */
  readonly call: { readonly callId: string; readonly title: string } | null;
}

/** What a revision rests on, null where it was not made from a plan. */
export async function revisionEvidence(access: PatternAccess, number: number): Promise<Evidence | null> {
  const row = await database().revisionEvidence.findFirst({
    where: { revision: { number, pattern: patternScope(access) } },
    select: { take: true, analysis: true, misworked: true, call: { select: { id: true, title: true } } },
  });
  if (row === null) return null;
  return {
    take: readTake(row.take),
    analysis: gapsOutputSchema.parse(JSON.parse(row.analysis)),
    misworked: misworkedSchema.parse(row.misworked),
    call: row.call && { callId: row.call.id, title: row.call.title },
  };
}
