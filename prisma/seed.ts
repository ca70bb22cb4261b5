import { randomUUID } from "node:crypto";
import { DEMO_ACCOUNT } from "@/features/accounts/demo-account";
import { createAccount } from "@/features/accounts/mutations";
import type { Places } from "@/engine/pattern";
import { proveCall } from "@/features/calls/access";
import { createCall, raiseCallVersion } from "@/features/calls/mutations";
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
import { AUTUMN_PLACES, layAutumnPeople } from "./lay-autumn-test";

/** Lays the demonstration: an account, an invented pattern and two tests with invented testers. Once; later starts keep it. */
export async function seedDemo(): Promise<void> {
  await createAccount(DEMO_ACCOUNT);
  const account = await database().account.findUniqueOrThrow({ where: { email: DEMO_ACCOUNT.email } });
  const isLaid = await database().pattern.findFirst({
    where: { isDemo: true, memberships: { some: { accountId: account.id } } },
  });
  if (isLaid) return;
  const viewer: Viewer = { accountId: account.id, name: account.name, email: account.email, unit: "cm" };
  const pattern = await layPattern(viewer);
  await laySpringTest(viewer, pattern);
  await layAutumnTest(viewer, pattern);
}

interface LaidPattern {
  readonly patternId: string;
  readonly revisionId: string;
}

async function layPattern(viewer: Viewer): Promise<LaidPattern> {
  return await createPattern(viewer, {
    document: saltmarshPattern,
    reason: "First version, invented for the demonstration",
    isDemo: true,
  });
}

/** Everybody has reported: what is left to do is with the designer. */
async function laySpringTest(viewer: Viewer, { patternId, revisionId }: LaidPattern): Promise<void> {
  const title = "Spring test (invented)";
  const { call } = saltmarshCall();
  const callId = await inTransaction(async (connection) => {
    const pattern = await provePattern(connection, { viewer, patternId, least: "owner" });
    const made = await createCall(pattern, { title, places: call.places }, connection);
    const access = await proveCall(connection, { viewer, callId: made.callId, least: "owner" });
    const reports = call.testers.map((tester, at) => ({
      tester,
      name: TESTER_NAMES[at] ?? tester.id,
      typed: {},
      idempotencyKey: randomUUID(),
    }));
    await addReports(access, { revision: { revisionId, document: call.pattern }, reports }, connection);
    return made.callId;
  });
  const inDays = { applyUntil: -80, startOn: -74, swatchBy: -60, reportBy: -4 };
  await layListing(viewer, { callId, title, places: call.places, inDays });
}

/** Half of it is done: testers at every stage, and people who have applied. */
async function layAutumnTest(viewer: Viewer, { patternId, revisionId }: LaidPattern): Promise<void> {
  const title = "Autumn test (invented)";
  const callId = await inTransaction(async (connection) => {
    const pattern = await provePattern(connection, { viewer, patternId, least: "owner" });
    return (await createCall(pattern, { title, places: AUTUMN_PLACES }, connection)).callId;
  });
  // Who is at work since long has days of their own.
  const inDays = { applyUntil: 6, startOn: 8, swatchBy: 22, reportBy: 63 };
  await layListing(viewer, { callId, title, places: AUTUMN_PLACES, inDays });
  await layAutumnPeople({ callId, revisionId, designerId: viewer.accountId, now: new Date() });
  await inTransaction((connection) => raiseCallVersion(connection, callId));
}

interface ListingLaid {
  readonly callId: string;
  readonly title: string;
  readonly places: Places;
  readonly inDays: Parameters<typeof saltmarshListing>[0]["inDays"];
}

async function layListing(viewer: Viewer, { callId, ...given }: ListingLaid): Promise<void> {
  const access = await proveCall(database(), { viewer, callId, least: "owner" });
  const now = new Date();
  const typed = saltmarshListing({ ...given, now });
  const publishedOn = new Date(now.getTime() + Math.min(0, given.inDays.applyUntil - 1) * DAY_MS);
  const whole = completeListing(typed, { pattern: saltmarshPattern, now: publishedOn, published: null });
  if (!whole.ok)
    throw new Error(`the demo's listing is not whole: ${whole.faults.map(({ message }) => message).join(" ")}`);
  await createListing(access, typed);
  await publishListing(access, { version: 1, listing: whole.listing });
}

const DAY_MS = 24 * 60 * 60 * 1_000;
