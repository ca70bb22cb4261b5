import { randomUUID } from "node:crypto";
import { DEMO_ACCOUNT } from "@/features/accounts/demo-account";
import { createAccount } from "@/features/accounts/mutations";
import type { Places } from "@/engine/pattern";
import { proveCall } from "@/features/calls/access";
import { createCall } from "@/features/calls/mutations";
import { createListing, publishListing } from "@/features/recruiting/listing/mutations";
import { completeListing } from "../src/features/recruiting/listing/complete-listing";
import { provePattern } from "@/features/patterns/access";
import { createPattern } from "@/features/patterns/mutations";
import { addReports } from "@/features/testing/report/mutations";
import { database } from "@/server/database";
import { inTransaction } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { saltmarshCall } from "./demo/saltmarsh-call";
import { saltmarshListing } from "./demo/saltmarsh-listing";
import { saltmarshPattern } from "./demo/saltmarsh-pattern";
import { TESTER_NAMES } from "./demo/tester-names";

/** Lays the demonstration: an account, an invented pattern and a call with invented testers. Once; later starts keep it. */
export async function seedDemo(): Promise<void> {
  await createAccount(DEMO_ACCOUNT);
  const account = await database().account.findUniqueOrThrow({ where: { email: DEMO_ACCOUNT.email } });
  const isLaid = await database().pattern.findFirst({
    where: { isDemo: true, memberships: { some: { accountId: account.id } } },
  });
  if (isLaid) return;
  await laySaltmarsh({ accountId: account.id, name: account.name, email: account.email, unit: "cm" });
}

const TITLE = "Spring test (invented)";

async function laySaltmarsh(viewer: Viewer): Promise<void> {
  const { call } = saltmarshCall();
  const document = call.pattern;
  const laid = await inTransaction(async (connection) => {
    const { patternId, revisionId } = await createPattern(
      viewer,
      { document, reason: "First version, invented for the demonstration", isDemo: true },
      connection,
    );
    const pattern = await provePattern(connection, { viewer, patternId, least: "owner" });
    const { callId } = await createCall(pattern, { title: TITLE, places: call.places }, connection);
    const access = await proveCall(connection, { viewer, callId, least: "owner" });
    const reports = call.testers.map((tester, at) => ({
      tester,
      name: TESTER_NAMES[at] ?? tester.id,
      typed: {},
      idempotencyKey: randomUUID(),
    }));
    await addReports(access, { revision: { revisionId, document }, reports }, connection);
    return callId;
  });
  await layListing(viewer, { callId: laid, places: call.places });
}

async function layListing(viewer: Viewer, { callId, places }: { callId: string; places: Places }): Promise<void> {
  const access = await proveCall(database(), { viewer, callId, least: "owner" });
  const now = new Date();
  const typed = saltmarshListing({ title: TITLE, places, now });
  const whole = completeListing(typed, { pattern: saltmarshPattern, now, published: null });
  if (!whole.ok)
    throw new Error(`the demo's listing is not whole: ${whole.faults.map(({ message }) => message).join(" ")}`);
  await createListing(access, typed);
  await publishListing(access, { version: 1, listing: whole.listing });
}
