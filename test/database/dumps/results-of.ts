import { runEngineTask } from "@/engine/engine-task";
import { analysisInput } from "@/features/analyses/analysis-input";
import { storedAnalysis } from "@/features/analyses/data";
import { doubtfulItems } from "@/features/analyses/doubtful-items";
import { fitBoard } from "@/features/analyses/fit-board";
import { gapBoard } from "@/features/analyses/gap-board";
import type { LoadedAnalysis } from "@/features/analyses/loaders";
import { reckonAnalysis } from "@/features/analyses/mutations";
import { revisionEvidence, storedPlan } from "@/features/analyses/plan-data";
import { planOutcome } from "@/features/analyses/plan-outcome";
import { swatchView } from "@/features/analyses/swatch-view";
import { testerBoard } from "@/features/analyses/tester-board";
import { yarnBoard } from "@/features/analyses/yarn-board";
import { unsafeOwnerAccess, type CallAccess } from "@/features/calls/access";
import { callDocument, callTesters } from "@/features/calls/data";
import { listRevisions, revisionByNumber } from "@/features/patterns/data";
import { database } from "@/server/database";
import { highsSolver } from "@/solver/highs-solver";

/** Numbers are compared to so many digits: another order of the same sum may change those behind them. */
const DIGITS = 7;

/**
 * What a call's pages of results show, as numbers and names without sentences, so that it can be compared with what an
 * earlier version of Sizewright showed. What is computed otherwise or stored elsewhere one day is put together here.
 */
export async function resultsOf(callId: string): Promise<unknown> {
  const access = await unsafeOwnerAccess(callId);
  if (access === null) throw new Error(`there is no call ${callId}`);
  const analysis = await analysisOf(access);
  return plain({
    analysis: analysis === "stopped" ? "stopped" : pagesOf(analysis),
    plans: await plansOf(access),
    evidence: await evidenceOf(access),
  });
}

async function analysisOf(access: CallAccess): Promise<LoadedAnalysis | "stopped"> {
  const [document, testers] = [await callDocument(access), await callTesters(access)];
  // One that took too long is left so: a later engine would try it anew.
  if ((await database().analysis.count({ where: { callId: access.callId, output: null } })) > 0) return "stopped";
  const solver = await highsSolver();
  // A later engine keeps its own analysis beside the one that was kept; where that stands, this changes nothing.
  await reckonAnalysis(access, (task) => Promise.resolve(runEngineTask(task, solver)));
  const output = await storedAnalysis(access, analysisInput(document));
  if (output === null || output === "stopped") throw new Error("a call was analysed and its analysis is not there");
  return { document, output, names: new Map(testers.map(({ code, name }) => [code, name ?? code])) };
}

function pagesOf(analysis: LoadedAnalysis) {
  const { document, output, names } = analysis;
  const { rows, tally } = gapBoard(document, output, "cm");
  return {
    names: [...names],
    differences: rows.flatMap(({ cells }) => cells.map(({ cell, state, causes }) => ({ ...cell, state, causes }))),
    tally,
    causes: output.causes,
    gauge: output.gauge,
    suspects: output.suspects,
    steps: output.steps,
    variances: output.variances,
    doubtful: doubtfulItems(document, output),
    swatches: swatchView(analysis, "cm").map(({ fabric, ...fabrics }) => ({ fabric: fabric.id, ...fabrics })),
    testers: testerBoard(analysis).rows.map(({ comparisons, ...row }) => ({
      ...row,
      comparisons: comparisons.map(({ measurement, ...comparison }) => ({ id: measurement.id, ...comparison })),
    })),
    yarn: yarnBoard(analysis, { unit: "cm", roundTo: 10 }).sheets.map(({ yarn, rows: needs, state, reported }) => ({
      ...{ yarn: yarn.id, state, reported },
      needs: needs.map(({ size, ...need }) => ({ size: size.id, ...need })),
    })),
    fit: fitBoard(analysis).flatMap(({ id, rows: sizes }) =>
      sizes.flatMap(({ answers }) => answers.map(({ size, ...answer }) => ({ area: id, size: size.id, ...answer }))),
    ),
  };
}

async function plansOf(access: CallAccess) {
  const rows = await database().plan.findMany({ where: { callId: access.callId }, orderBy: { createdAt: "asc" } });
  const plans = [];
  for (const { id } of rows) {
    const { take, baseNumber, input, output } = await storedPlan(access, id);
    const { document: before } = await revisionByNumber(access.pattern, baseNumber);
    const analysis = await storedAnalysis(access, input);
    const isShown = output?.status === "revised" && analysis !== null && analysis !== "stopped";
    const outcome = isShown ? planOutcome({ before, analysis, take, plan: output }) : null;
    plans.push({
      ...{ take, baseNumber, status: output?.status ?? null },
      instructions: outcome?.instructions,
      changed: outcome?.changedRows,
      expected: outcome?.rows.flatMap(({ measurement, cells }) =>
        cells.map(({ size, before: was, after }) => ({
          ...{ measurement: measurement.id, size: size.id, was: was.expectedCm, wasFound: was.against },
          ...{ becomes: after.expectedCm, from: after.lowCm, to: after.highCm, found: after.against },
        })),
      ),
    });
  }
  return plans;
}

async function evidenceOf({ pattern }: CallAccess) {
  const revisions = [];
  for (const { number, reason } of await listRevisions(pattern)) {
    const evidence = await revisionEvidence(pattern, number);
    const differences = evidence?.analysis.cells.map(({ gapCm, verdict }) => ({ gapCm, verdict }));
    revisions.push({ number, reason, take: evidence?.take, misworked: evidence?.misworked, differences });
  }
  return revisions;
}

/** As JSON has it, numbers to a few digits. */
function plain(value: unknown): unknown {
  const json = JSON.stringify(value, (_key, member: unknown) =>
    typeof member === "number" && !Number.isInteger(member) ? Number(member.toPrecision(DIGITS)) : member,
  );
  return JSON.parse(json);
}
