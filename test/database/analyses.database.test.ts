import { randomUUID } from "node:crypto";
import { beforeAll, describe, expect, it } from "vitest";
import { ENGINE_VERSION } from "@/engine/engine-version";
import { gaps } from "@/engine/gaps";
import { analysisInput } from "@/features/analyses/analysis-input";
import { storedAnalysis } from "@/features/analyses/data";
import { runEngineTask, type EngineTask } from "@/engine/engine-task";
import { loadAnalysis } from "@/features/analyses/loaders";
import { reckonAnalysis } from "@/features/analyses/mutations";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { callDocument } from "@/features/calls/data";
import { createCall } from "@/features/calls/mutations";
import { patternAccess } from "@/features/patterns/access";
import { createPattern } from "@/features/patterns/mutations";
import { addReports } from "@/features/reports/mutations";
import { database } from "@/server/database";
import type { Reckon } from "@/server/reckon";
import { inTransaction } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { reader } from "../factories/call";
import { patternDocument } from "../factories/pattern";
import { makeAccount } from "./make-account";

/** The engine in this thread; what is asked here needs no solver. */
const reckon: Reckon<EngineTask> = (task) =>
  Promise.resolve(
    runEngineTask(task, () => {
      throw new Error("nothing is solved here");
    }),
  );

let callId: string;
let access: CallAccess;
let looker: Viewer;
let stranger: Viewer;

async function person(): Promise<Viewer> {
  const { id, name, email } = await makeAccount();
  return { accountId: id, name, email, unit: "cm" };
}

beforeAll(async () => {
  const designer = await person();
  [looker, stranger] = [await person(), await person()];
  const document = patternDocument();
  const { patternId, revisionId } = await createPattern(designer, { document, reason: "First" });
  await database().membership.create({ data: { patternId, accountId: looker.accountId, role: "viewer" } });
  const places = { small: { least: 1, wanted: 2 }, large: { least: 1, wanted: 2 } };
  const pattern = await patternAccess(designer, patternId, "editor");
  ({ callId } = await inTransaction((connection) => createCall(pattern, { title: "A call", places }, connection)));
  access = await callAccess(designer, callId, "editor");
  await addReports(access, {
    revision: { revisionId, document },
    reports: [
      { tester: reader("t1", { bust: 103, length: 41 }), typed: {}, submissionKey: randomUUID() },
      { tester: reader("t2", { bust: 102, length: 40 }), typed: {}, submissionKey: randomUUID() },
      { tester: reader("t3", { bust: 123 }, { size: "large" }), typed: {}, submissionKey: randomUUID() },
    ],
  });
});

describe("a call's analysis", () => {
  it("is not there before the worker has reckoned it, and reading asks for nothing", async () => {
    expect(await loadAnalysis(access)).toBeNull();
    expect(await database().analysis.count({ where: { callId } })).toBe(0);
  });

  it("is kept once for one input, as the engine printed it", async () => {
    await reckonAnalysis(access, reckon);
    await reckonAnalysis(access, reckon);
    const kept = await database().analysis.findMany({ where: { callId } });
    const document = await callDocument(access);
    expect(kept.map(({ output }) => output)).toEqual([JSON.stringify(gaps(document))]);
    expect(kept[0]).toMatchObject(analysisInput(document));
  });

  it("is read from what is kept", async () => {
    await reckonAnalysis(access, reckon);
    await database().analysis.updateMany({
      where: { callId, engineVersion: ENGINE_VERSION },
      data: { output: JSON.stringify({ ...gaps(await callDocument(access)), status: "stopped" }) },
    });
    expect((await loadAnalysis(access))?.output.status).toBe("stopped");
  });

  it("is told to have been stopped where it took too long, and is not tried again for the same input", async () => {
    await database().analysis.deleteMany({ where: { callId } });
    await reckonAnalysis(access, () => Promise.resolve(null));
    await reckonAnalysis(access, reckon);
    await expect(loadAnalysis(access)).rejects.toMatchObject({ code: "too-long" });
    await database().analysis.deleteMany({ where: { callId } });
  });

  it("is somebody else's business only through her own part in the call", async () => {
    await expect(callAccess(stranger, callId, "viewer")).rejects.toMatchObject({ code: "not-found" });
    await expect(callAccess(looker, callId, "editor")).rejects.toMatchObject({ code: "not-allowed" });
    const forged = { ...access, pattern: { ...access.pattern, accountId: stranger.accountId } };
    expect(await storedAnalysis(forged, analysisInput(await callDocument(access)))).toBeNull();
  });
});
