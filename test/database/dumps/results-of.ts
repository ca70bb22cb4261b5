import { z } from "zod";
import { runEngineTask } from "@/engine/engine-task";
import { callResultsSchema, testerResultsSchema } from "@/engine/results";
import { storedResults, storedTesters } from "@/features/results/data";
import { fitAnswers } from "../../../src/features/results/fit/fit-data";
import { gapBoard } from "../../../src/features/results/gaps/gap-board";
import { analyseCall } from "@/features/results/mutations";
import { swatchView } from "../../../src/features/results/swatches/swatch-view";
import { testerBoard } from "../../../src/features/results/habits/habits-board";
import { yarnBoard } from "../../../src/features/results/yarn/yarn-board";
import { unsafeOwnerAccess, type CallAccess } from "@/features/calls/access";
import { latestRevision, listRevisions } from "@/features/patterns/data";
import { database } from "@/server/database";
import { highsSolver } from "@/solver/highs-solver";

/** Numbers are compared to so many digits: another order of the same sum may change those behind them. */
const DIGITS = 7;

/**
 * What a call's pages of results show, as numbers and names without sentences, so that it can be compared with what an
 * earlier version of Sizewright showed. What is computed otherwise or stored elsewhere one day is put together here.
 */
export async function resultsOf(callId: string): Promise<{ readonly analysis: unknown; readonly evidence: unknown }> {
  const access = await unsafeOwnerAccess(callId);
  if (access === null) throw new Error(`there is no call ${callId}`);
  const solver = await highsSolver();
  await analyseCall(callId, (task) => Promise.resolve(runEngineTask(task, solver)));
  return { analysis: plain(await pagesOf(access)), evidence: plain(await evidenceOf(access)) };
}

async function pagesOf(access: CallAccess) {
  const { version } = await database().call.findUniqueOrThrow({ where: { id: access.callId } });
  const { progress, analysis } = await storedResults(
    access,
    version,
    callResultsSchema.omit({ testers: true, leftOut: true }),
  );
  if (analysis === null || progress.status !== "current")
    throw new Error("a call was analysed and its results are not there");
  const { parts, analysisId } = analysis;
  const { document: pattern } = await latestRevision(access.pattern);
  const testers = await storedTesters(access, { analysisId }, testerResultsSchema);
  const named = await database().tester.findMany({
    where: { callId: access.callId },
    orderBy: { position: "asc" },
    select: { code: true, contact: { select: { name: true } } },
  });
  const names = new Map(named.map(({ code, contact }) => [code, contact?.name ?? code]));
  const { rows, tally } = gapBoard({ pattern, ...parts }, "cm");
  const consistency = testerBoard({ pattern, ...parts, rows: testers, testers: testers.length, places: [] });
  const yarn = yarnBoard({ pattern, ...parts, testers, names }, { unit: "cm", roundTo: 10 });
  return {
    names: [...names],
    differences: rows.flatMap(({ cells }) => cells.map(({ cell, state, causes }) => ({ ...cell, state, causes }))),
    tally,
    causes: parts.differences.causes.map(({ movesCm: _, solvable: __, breaks: ___, rivals, ...cause }) => ({
      ...cause,
      rivals: rivals.map(({ solvable: ____, ...rival }) => rival),
    })),
    gauge: parts.gauges.findings.map(({ bars: _, ...finding }) => finding),
    suspects: parts.method.suspects,
    steps: testers.flatMap(({ readings }) => readings.map(({ step }) => step)),
    variances: parts.method.variances,
    doubtful: parts.flagged.map(({ value: _, ...item }) => item),
    swatches: swatchView({ pattern, ...parts, testers, names }, "cm").map(({ fabric, gauges, rows, without }) => ({
      ...{ fabric: fabric.id, rows, without: without.names },
      gauges: gauges.map(({ bars: _, ...gauge }) => gauge),
    })),
    testers: consistency.rows.map(({ tester, name, size, driftAcross, driftAlong, comparisons }) => ({
      ...{ tester, name, size, driftAcross, driftAlong },
      comparisons: comparisons.map(({ measurement, ...comparison }) => ({ id: measurement.id, ...comparison })),
    })),
    yarn: yarn.sheets.map(({ yarn: { id }, rows: needs, state, reported }) => ({
      ...{ yarn: id, state, reported },
      needs: needs.map(({ size, used: _, ...need }) => ({ size: size.id, ...need })),
    })),
    fit: await fitAnswers(access),
  };
}

/** Of revisions that were made from plans: what was known then; under the names that the dump has. */
async function evidenceOf({ pattern }: CallAccess) {
  const cellsSchema = z.object({
    cells: z.array(z.object({ gapCm: z.number().nullable(), verdict: z.string().nullable() })),
  });
  const revisions = [];
  for (const { revisionId, number, reason } of await listRevisions(pattern)) {
    const row = await database().revisionEvidence.findUnique({ where: { revisionId } });
    const differences = row === null ? undefined : cellsSchema.parse(JSON.parse(row.analysis)).cells;
    revisions.push({ number, reason, take: row?.take, misworked: row?.instructionErrors, differences });
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
