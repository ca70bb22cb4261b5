import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import { runEngineTask, type EngineTask } from "@/engine/engine-task";
import { parseCall, type CallDocument } from "@/engine/pattern";
import { gaps } from "@/engine/gaps";
import { combinedCall } from "@/engine/revision";
import { testerResultsSchema } from "@/engine/results";
import { callAccess, countedCalls, type CallAccess } from "@/features/calls/access";
import { callDocument, callSnapshot } from "@/features/calls/data";
import { latestRevision } from "@/features/patterns/data";
import { saveRevision } from "@/features/patterns/mutations";
import { countedTests, madeDecisions, storedTesters, testerNames } from "@/features/results/data";
import { analyseCall, nextCallToAnalyse } from "@/features/results/mutations";
import { reportedIn } from "@/features/results/named-testers-data";
import { addReports, decide } from "@/features/testing/report/mutations";
import { database } from "@/server/database";
import type { RunTask } from "@/server/run-task";
import { inTransaction } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { countsEarlier, notCarriedFrom } from "../../src/features/testing/again/again-data";
import { countEarlier, startNextCall } from "../../src/features/testing/again/again-mutations";
import { unsafeTestersToForget } from "../../src/features/testing/forget/access";
import { forgetTesterIn } from "../../src/features/testing/forget/forget-in-mutations";
import { reader } from "../factories/call";
import { patternDocument } from "../factories/pattern";
import { makeViewer } from "./make-account";
import { makeCall } from "./invited-tester";

const run: RunTask<EngineTask> = (task) =>
  Promise.resolve(
    runEngineTask(task, () => {
      throw new Error("nothing is solved here");
    }),
  );

const before = patternDocument();
const revised = patternDocument({ grading: { width: { small: 90, large: 112 }, height: { small: 100, large: 110 } } });

let designer: Viewer;
let first: CallAccess;

async function report(access: CallAccess, tester: ReturnType<typeof reader>): Promise<void> {
  const revision = await latestRevision(access.pattern);
  await addReports(access, { revision, reports: [{ tester, typed: {}, idempotencyKey: randomUUID() }] });
}

async function next(after = first): Promise<CallAccess> {
  const started = { title: "Second test", typed: {}, idempotencyKey: randomUUID() };
  const { callId } = await startNextCall(after, started);
  return await callAccess(designer, callId, "owner");
}

async function versionOf({ callId }: CallAccess): Promise<number> {
  return (await database().call.findUniqueOrThrow({ where: { id: callId } })).version;
}

async function workOff(): Promise<void> {
  for (let next = await nextCallToAnalyse(); next !== null; next = await nextCallToAnalyse())
    await analyseCall(next, run);
}

async function analysisOf({ callId }: CallAccess): Promise<{ analysisId: string }> {
  const { id } = await database().analysis.findFirstOrThrow({ where: { callId } });
  return { analysisId: id };
}

beforeEach(async () => {
  designer = await makeViewer("Ana");
  first = await makeCall(designer);
  await report(first, reader("t1", { bust: 103, length: 40.5 }));
  await report(first, reader("t2", { bust: 102 }));
  await saveRevision(first.pattern, { document: revised, reason: "Narrower", baseNumber: 1 });
});

describe("a test of the next revision", { timeout: 60_000 }, () => {
  it("counts the earlier reports with the numbers worked there, each under a name of its own", async () => {
    const second = await next();
    await report(second, reader("t1", { bust: 94 }));
    const { document } = await callSnapshot(second);
    expect(document.testers).toHaveLength(3);
    expect(new Set(document.testers.map(({ id }) => id)).size).toBe(3);
    // By hand: 98 stitches at 20 to 10 cm and two edgings, twice, are 100 cm; 90 are 92.
    const bust = gaps(document).steps.filter(({ measurement }) => measurement === "bust");
    expect(bust.map(({ gapCm }) => Math.round(gapCm))).toEqual([2, 3, 2]);
    const own = await callSnapshot(first);
    expect(own.document.testers.map(({ id }) => id)).toEqual(["t1", "t2"]);
  });

  it("stores what it makes of them, with the name of their test, and no more than they are", async () => {
    const second = await next();
    await report(second, reader("t1", { bust: 94 }));
    await workOff();
    const analysis = await analysisOf(second);
    expect(await countedTests(second, analysis)).toEqual([
      { callId: second.callId, title: "Second test", reports: 1 },
      { callId: first.callId, title: "Test", reports: 2 },
    ]);
    const rows = await storedTesters(second, analysis, testerResultsSchema);
    expect(rows.map(({ name }) => name)).toEqual(["t1", "t1 (Test)", "t2 (Test)"]);
    const ids = rows.map(({ tester }) => tester);
    const names = await testerNames(second, ids);
    expect(ids.map((id) => names.get(id))).toEqual(rows.map(({ name }) => name));
    expect(await countedTests(first, await analysisOf(first))).toEqual([]);
  });

  it("is calculated again with every change of the earlier test, and of the test before that", async () => {
    const second = await next();
    const third = await next(second);
    expect((await countedCalls(third)).map(({ callId }) => callId)).toEqual([second.callId, first.callId]);
    const versions = [await versionOf(second), await versionOf(third)];
    await decide(first, { tester: "t1", part: "readings", position: 0, decision: "set-aside" });
    expect([await versionOf(second), await versionOf(third)]).toEqual(versions.map((version) => version + 1));
    const { document } = await callSnapshot(third);
    expect(document.testers.map(({ readings }) => readings[0]?.decision)).toEqual(["set-aside", undefined]);
  });

  it("lets what somebody decides about an earlier reading be decided in its own test", async () => {
    const second = await next();
    await workOff();
    const [row] = await storedTesters(second, await analysisOf(second), testerResultsSchema);
    const { access, tester } = await reportedIn(second, row?.tester ?? "");
    expect([access.callId, tester]).toEqual([first.callId, "t1"]);
    await decide(access, { tester, part: "readings", position: 0, decision: "set-aside" });
    const made = await madeDecisions(second, [row?.tester ?? ""]);
    expect([...made.values()]).toMatchObject([{ decision: "set-aside", by: "Ana" }]);
    const stranger = await makeCall(await makeViewer("Sam"));
    await expect(reportedIn(stranger, row?.tester ?? "")).rejects.toMatchObject({ code: "not-found" });
    expect(await testerNames(stranger, [row?.tester ?? ""])).toEqual(new Map());
  });

  it("shows nothing that was calculated with a tester who is forgotten", async () => {
    const second = await next();
    await workOff();
    await inTransaction(async (transaction) => {
      const [whose] = await unsafeTestersToForget(transaction, { callId: first.callId });
      if (whose === undefined) throw new Error("there are two testers");
      await forgetTesterIn(transaction, whose);
    });
    expect(await database().analysis.count({ where: { callId: { in: [first.callId, second.callId] } } })).toBe(0);
    expect((await callSnapshot(second)).document.testers[0]).not.toHaveProperty("body");
  });

  it("counts alone where the designer wants it, and where sizes or measurements are others", async () => {
    const second = await next();
    expect(await countsEarlier(second, revised)).toMatchObject({ isCounted: true });
    const version = await versionOf(second);
    await countEarlier(second, false);
    expect(await versionOf(second)).toBe(version + 1);
    expect((await callSnapshot(second)).document.testers).toEqual([]);
    const [small] = before.sizes;
    if (small === undefined) throw new Error("the pattern has two sizes");
    const border = { id: "border", label: "Border", fabric: "main", direction: "rows" } as const;
    const document = patternDocument({
      sizes: [small],
      counts: [...before.counts, border],
      measurements: before.measurements.map((measurement) =>
        measurement.id === "length"
          ? { ...measurement, terms: [...measurement.terms, { times: 1, count: "border" }] }
          : measurement,
      ),
      grading: { width: { small: 90 }, height: { small: 100 }, border: { small: 10 } },
    });
    await saveRevision(first.pattern, { document, reason: "Border", baseNumber: 2 });
    const call = { id: first.callId };
    const left = { sizes: ["L"], measurements: ["B Length"], yarn: false };
    expect(await notCarriedFrom(first.pattern, call, { pattern: document })).toEqual(left);
    const third = await next();
    expect(await countsEarlier(third, document)).toEqual({ isCounted: false, notCarried: left });
    await countEarlier(third, true);
    const { document: combined } = await callSnapshot(third);
    expect(combined.testers.map(({ readings }) => readings.map(({ measurement }) => measurement))).toEqual([
      ["bust"],
      ["bust"],
    ]);
  });

  it("is exported with the earlier tests in it, which gives the same numbers elsewhere", async () => {
    const second = await next();
    await report(second, reader("t1", { bust: 94 }));
    const document = await callDocument(second);
    expect(document.calls?.map(({ testers }) => testers.map(({ id }) => id))).toEqual([["t1", "t2"]]);
    const parsed = parseCall(JSON.parse(JSON.stringify(document)));
    if (!parsed.ok) throw new Error("the export is faulty");
    const { call } = combinedCall(parsed.document);
    expect(call.testers.map(({ id }) => id)).toEqual(["t1", "t1-2", "t2"]);
    const gapsOf = (of: CallDocument) => gaps(of).cells.map(({ gapCm }) => gapCm?.toFixed(9));
    expect(gapsOf(call)).toEqual(gapsOf((await callSnapshot(second)).document));
  });

  it("is chosen by editors of the test alone, and only where it follows another", async () => {
    const second = await next();
    const vera = await makeViewer("Vera");
    const { patternId } = first.pattern;
    await database().membership.create({ data: { patternId, accountId: vera.accountId, role: "viewer" } });
    const looks = await callAccess(vera, second.callId, "viewer");
    await expect(countEarlier(looks, false)).rejects.toMatchObject({ code: "not-found" });
    await expect(countEarlier(first, true)).rejects.toMatchObject({ code: "not-found" });
  });
});
