import { randomUUID } from "node:crypto";
import { DEMO_ACCOUNT } from "@/features/accounts/demo-account";
import { createAccount } from "@/features/accounts/mutations";
import { runEngineTask } from "@/engine/engine-task";
import { reckonCall } from "@/features/analyses/mutations";
import { proveCall } from "@/features/calls/access";
import { createCall } from "@/features/calls/mutations";
import { provePattern } from "@/features/patterns/access";
import { createPattern } from "@/features/patterns/mutations";
import { addReports } from "@/features/reports/mutations";
import { database } from "@/server/database";
import { inTransaction } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { highsSolver } from "@/solver/highs-solver";
import { saltmarshCall } from "./demo/saltmarsh-call";
import { TESTER_NAMES } from "./demo/tester-names";

/** Lays the demonstration: an account, an invented pattern and a call with invented testers. Once; later starts keep it. */
export async function seedDemo(): Promise<void> {
  await createAccount(DEMO_ACCOUNT);
  const account = await database().account.findUniqueOrThrow({ where: { email: DEMO_ACCOUNT.email } });
  const isLaid = await database().pattern.findFirst({
    where: { invented: true, memberships: { some: { accountId: account.id } } },
  });
  if (isLaid) return;
  await laySaltmarsh({ accountId: account.id, name: account.name, email: account.email, unit: "cm" });
}

async function laySaltmarsh(viewer: Viewer): Promise<void> {
  const { call } = saltmarshCall();
  const document = call.pattern;
  const laid = await inTransaction(async (connection) => {
    const { patternId, revisionId } = await createPattern(
      viewer,
      { document, reason: "First version, invented for the demonstration", invented: true },
      connection,
    );
    const pattern = await provePattern(connection, { viewer, patternId, least: "owner" });
    const { callId } = await createCall(pattern, { title: "Spring test (invented)", places: call.places }, connection);
    const access = await proveCall(connection, { viewer, callId, least: "owner" });
    const reports = call.testers.map((tester, at) => ({
      tester,
      name: TESTER_NAMES[at] ?? tester.id,
      typed: {},
      submissionKey: randomUUID(),
    }));
    await addReports(access, { revision: { revisionId, document }, reports }, connection);
    return callId;
  });
  const solver = await highsSolver();
  await reckonCall(laid, (task) => Promise.resolve(runEngineTask(task, solver)));
}
