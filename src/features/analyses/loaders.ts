import "server-only";
import type { GapsOutput } from "@/engine/gaps";
import type { CallDocument } from "@/engine/pattern";
import type { CallAccess } from "@/features/calls/access";
import { callDocument, callTesters } from "@/features/calls/data";
import { patternAccess } from "@/features/patterns/access";
import { revisionByNumber, type Revision } from "@/features/patterns/data";
import { AppError } from "@/server/errors";
import { foundOr404 } from "@/server/found-or-404";
import { requireViewer } from "@/server/viewer";
import { analysisInput } from "./analysis-input";
import { storedAnalysis } from "./data";
import { revisionEvidence, storedPlan, type Evidence, type StoredPlan } from "./plan-data";

export interface LoadedAnalysis {
  readonly document: CallDocument;
  readonly output: GapsOutput;
  /** What a tester is called, by her id in the document: her name, or the id where she has none. */
  readonly names: ReadonlyMap<string, string>;
}

/**
 * The call as it stands now with its analysis, null while the worker has not reckoned it.
 *
 * @throws {AppError} "too-long" where reckoning it was stopped.
 */
export async function loadAnalysis(access: CallAccess): Promise<LoadedAnalysis | null> {
  const [document, testers] = await Promise.all([callDocument(access), callTesters(access)]);
  const output = await storedAnalysis(access, analysisInput(document));
  if (output === "stopped") throw new AppError("too-long");
  if (output === null) return null;
  return { document, output, names: new Map(testers.map(({ code, name }) => [code, name ?? code])) };
}

export interface LoadedPlan {
  readonly plan: StoredPlan;
  /** The revision that it changes, and what was reckoned of it. */
  readonly base: Revision;
  readonly analysis: GapsOutput | null;
  /** Reports, decisions or a revision came in since. */
  readonly overtaken: boolean;
}

/** A plan of this call with all that it is compared with. */
export async function loadPlan(access: CallAccess, planId: string): Promise<LoadedPlan> {
  const plan = await foundOr404(storedPlan(access, planId));
  const [base, analysis, document] = await Promise.all([
    revisionByNumber(access.pattern, plan.baseNumber),
    storedAnalysis(access, plan.input),
    callDocument(access),
  ]);
  const overtaken = analysisInput(document).inputHash !== plan.input.inputHash;
  return { plan, base, analysis: analysis === "stopped" ? null : analysis, overtaken };
}

/** What a revision rests on, null where it was not made from a plan. */
export async function loadEvidence(patternId: string, number: number): Promise<Evidence | null> {
  const access = await patternAccess(await requireViewer(), patternId, "viewer");
  return await revisionEvidence(access, number);
}
