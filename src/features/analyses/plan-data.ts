import "server-only";
import { z } from "zod";
import type { Taken } from "@/engine/revision";
import { callScope, type CallAccess } from "@/features/calls/access";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { readPlanOutput, readTake, type PlanOutput } from "./plan-schema";

export interface StoredPlan {
  readonly planId: string;
  readonly take: readonly Taken[];
  /** The revision that it changes. */
  readonly baseNumber: number;
  /** Null while it is being reckoned. */
  readonly output: PlanOutput | null;
}

/** A plan of this call. @throws {AppError} "not-found" */
export async function storedPlan(access: CallAccess, planId: string): Promise<StoredPlan> {
  if (!z.uuid().safeParse(planId).success) throw new AppError("not-found");
  const row = await database().plan.findFirst({
    where: { id: planId, call: callScope(access) },
    select: { id: true, take: true, baseNumber: true, output: true },
  });
  if (row === null) throw new AppError("not-found");
  const output = row.output === null ? null : readPlanOutput(row.output);
  return { planId: row.id, take: readTake(row.take), baseNumber: row.baseNumber, output };
}
