import "server-only";
import type { z } from "zod";
import type { PatternDocument } from "@/engine/pattern";
import type { CallAccess } from "@/features/calls/access";
import type { CurrentCall } from "@/features/calls/data";
import { patternAccess } from "@/features/patterns/access";
import { revisionById, revisionByNumber, type Revision } from "@/features/patterns/data";
import { foundOr404 } from "@/server/found-or-404";
import { requireViewer } from "@/server/viewer";
import {
  countedTests,
  storedResults,
  testerNames,
  type AnalysisProgress,
  type CountedTest,
  type StoredAnalysis,
} from "./data";
import { revisionEvidence, storedPlan, type Evidence, type StoredPlan } from "./changes/plan-data";

/** Parts of an analysis, and the pattern that it is of. */
export type Results<Parts> = StoredAnalysis &
  Parts & {
    readonly pattern: PatternDocument;
    readonly revisionNumber: number;
  };

/** What a page of a call has loaded already before its results. */
export interface ShownCall {
  readonly access: CallAccess;
  readonly call: CurrentCall;
  readonly revision: Revision;
}

export interface LoadedResults<Parts> {
  readonly progress: AnalysisProgress;
  /** The last results; null where there are none. */
  readonly results: Results<Parts> | null;
  /** Names of testers whose reports were left out of it. */
  readonly leftOut: readonly { readonly name: string; readonly message: string }[];
  /** The tests whose reports are in it, the call's own first; none where those are its own alone. */
  readonly tests: readonly CountedTest[];
}

/**
 * Parts of a call's stored analysis, with the pattern that it is of.
 *
 * @param schema of `callResultsSchema`, the parts that the page shows.
 */
export async function loadResults<Shape extends z.ZodRawShape>(
  { access, call, revision }: ShownCall,
  schema: z.ZodObject<Shape>,
): Promise<LoadedResults<z.output<z.ZodObject<Shape>>>> {
  const { progress, analysis } = await storedResults(access, call.version, schema);
  if (analysis === null) return { progress, results: null, leftOut: [], tests: [] };
  const { parts, ...stored } = analysis;
  const of =
    stored.revisionId === revision.revisionId ? revision : await revisionById(access.pattern, stored.revisionId);
  const results = { ...stored, ...parts, pattern: of.document, revisionNumber: of.number };
  const [leftOut, tests] = await Promise.all([
    namedLeftOut(access, stored),
    call.countsEarlier ? countedTests(access, stored) : [],
  ]);
  return { progress, results, leftOut, tests };
}

async function namedLeftOut(access: CallAccess, { leftOut }: StoredAnalysis): Promise<LoadedResults<never>["leftOut"]> {
  const names = await testerNames(
    access,
    leftOut.map(({ tester }) => tester),
  );
  return leftOut.map(({ tester, message }) => ({ name: names.get(tester) ?? tester, message }));
}

export interface LoadedPlan {
  readonly plan: StoredPlan;
  /** The revision that it changes. */
  readonly base: Revision;
}

/** A plan of this call with what it changes. */
export async function loadPlan(access: CallAccess, planId: string): Promise<LoadedPlan> {
  const plan = await foundOr404(storedPlan(access, planId));
  return { plan, base: await revisionByNumber(access.pattern, plan.baseNumber) };
}

/** The evidence for a revision; null where it was not made from a plan. */
export async function loadEvidence(patternId: string, number: number): Promise<Evidence | null> {
  const access = await patternAccess(await requireViewer(), patternId, "viewer");
  return await revisionEvidence(access, number);
}
