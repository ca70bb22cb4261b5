import { encode } from "next-auth/jwt";
import { randomUUID } from "node:crypto";
import { benchCall } from "@/cli/bench/bench-call";
import { runEngineTask } from "@/engine/engine-task";
import { readInstructions } from "@/engine/instructions";
import { typedOfReport } from "@/engine/reporting";
import { createAccount } from "@/features/accounts/mutations";
import { analyseCall } from "@/features/results/mutations";
import { applicationLink } from "@/features/recruiting/applications/access";
import { proveCall } from "@/features/calls/access";
import { createCall } from "@/features/calls/mutations";
import { provePattern } from "@/features/patterns/access";
import { createPattern } from "@/features/patterns/mutations";
import { addReports } from "@/features/testing/report/mutations";
import { testerCookieName } from "@/features/testing/home/tester-cookie-name";
import { database } from "@/server/database";
import { environment } from "@/server/environment";
import { linkKey } from "@/server/link-key";
import { highsSolver } from "@/solver/highs-solver";
import { formatLength } from "@/ui/format-length";
import { saltmarshPattern } from "./demo/saltmarsh-pattern";

/*
 * For `npm run bench -- pages`: an invented call with as many testers as the argument says, all at work, and as many more
 * who applied. Prints the ids that its pages are found by, and with which cookies they are asked for.
 */

const PEOPLE = Number(process.argv[2] ?? 300);
const DAY_MS = 24 * 60 * 60 * 1000;
const { sizes } = saltmarshPattern;
const instructions = readInstructions(saltmarshPattern.instructions ?? "");
const [aPlace] = instructions.map(({ place }) => place);

const owner = await signedUp("designer");
const nobody = await signedUp("newcomer");
const { callId, revisionId } = await seedCall();
const testers = await seedPeople();
const solver = await highsSolver();
await analyseCall(callId, (task) => Promise.resolve(runEngineTask(task, solver)));
await tell();
process.exit();

async function signedUp(called: string) {
  const email = `${called}-${randomUUID()}@example.org`;
  await createAccount({ name: `Invented ${called}`, email, password: randomUUID() });
  const { id: accountId, name } = await database().account.findUniqueOrThrow({ where: { email } });
  const token = await encode({
    token: { sub: accountId, name, sessionVersion: 1 },
    secret: environment().NEXTAUTH_SECRET,
  });
  return { accountId, name, email, unit: "cm", cookie: `next-auth.session-token=${token}` } as const;
}

async function seedCall() {
  const call = benchCall(PEOPLE);
  const created = await createPattern(owner, { document: saltmarshPattern, reason: "For the bench" });
  const pattern = await provePattern(database(), { viewer: owner, patternId: created.patternId, least: "owner" });
  const made = await createCall(pattern, { title: `Bench of ${PEOPLE} testers`, places: call.places }, database());
  const access = await proveCall(database(), { viewer: owner, callId: made.callId, least: "owner" });
  const reports = call.testers.map((tester, at) => ({
    ...{ tester, typed: {}, name: `Invented tester ${at + 1}`, idempotencyKey: randomUUID() },
  }));
  const revision = { revisionId: created.revisionId, document: saltmarshPattern };
  await addReports(access, { revision, reports });
  return { callId: made.callId, revisionId: created.revisionId };
}

/** An listing, those who applied, and testers who are at work by a link, with their drafts, questions and trouble. */
async function seedPeople() {
  const now = Date.now();
  const day = (days: number) => new Date(now + days * DAY_MS).toISOString().slice(0, 10);
  const document = {
    ...{ introduction: "Invented for the bench.", timeZone: "Europe/Lisbon" },
    dates: { applyUntil: day(5), startOn: day(7), swatchBy: day(14), reportBy: day(50) },
    ...{ asks: "A swatch, then the garment.", yarn: "Sport weight", tools: "4 mm", gives: "The pattern." },
    ...{ bodyAsked: ["bust", "upper-arm"], fitBy: ["bust"], mostApplications: null },
  };
  const applyUntil = new Date(now + 6 * DAY_MS);
  await database().listing.create({ data: { callId, document, publishedAt: new Date(now), applyUntil } });
  await database().agreement.create({ data: { callId, version: 1, text: "We are kind to each other." } });
  await seedApplications(now);
  const rows = await database().tester.findMany({
    where: { callId },
    orderBy: { position: "asc" },
    include: { reports: true },
  });
  const [invitedAt, invitationExpiresAt] = [new Date(now - 20 * DAY_MS), new Date(now - 10 * DAY_MS)];
  await database().tester.updateMany({
    where: { callId },
    data: { revisionId, invitedAt, invitationExpiresAt, acceptedAt: new Date(now - 15 * DAY_MS) },
  });
  await database().reportDraft.createMany({
    data: rows.map(({ id, size, reports: [sent] }) => ({
      testerId: id,
      typed: typedOfReport(
        { report: Object(sent?.document), typed: {} },
        { pattern: saltmarshPattern, size, unit: "cm", formatLength: (cm) => formatLength(cm, "cm") },
      ),
    })),
  });
  await database().milestone.createMany({
    data: rows.map(({ id }, at) => ({
      ...{ testerId: id, idempotencyKey: randomUUID() },
      status: (["track", "track", "behind", "stuck"] as const)[at % 4] ?? "track",
    })),
  });
  const at = { revisionId, place: { ...aPlace } };
  await database().question.createMany({
    data: rows.slice(0, 30).map(({ id }) => ({ callId, testerId: id, asks: "Knit wise?", idempotencyKey: id, ...at })),
  });
  await database().troubleSpot.createMany({
    data: rows.slice(0, 60).map(({ id }) => ({ testerId: id, happened: "One left.", idempotencyKey: id, ...at })),
  });
  return rows;
}

async function seedApplications(now: number): Promise<void> {
  const ids = Array.from({ length: PEOPLE }, () => randomUUID());
  const document = {
    ...{ accepts: null, prefers: [], forAnother: false, yarn: "", tool: "4 mm", unit: "cm", terms: "us" },
    ...{ timeZone: null, experience: "some", handle: "", pastWork: "" },
  };
  await database().application.createMany({
    data: ids.map((id, position) => ({
      ...{ id, callId, position, document, agreementVersion: 1, agreedAt: new Date(now), idempotencyKey: id },
      decision: (["yes", "maybe", "no"] as const)[position % 3] ?? "yes",
    })),
  });
  await database().applicationContact.createMany({
    data: ids.map((applicationId, at) => ({
      ...{ applicationId, callId, name: `Invented applicant ${at + 1}`, email: `${applicationId}@example.org` },
    })),
  });
  await database().applicationBody.createMany({
    data: ids.map((applicationId, at) => {
      const size = sizes[at % sizes.length];
      const aside = ((at * 7) % 11) / 2 - 2.5;
      return {
        applicationId,
        measurements: Object.fromEntries(Object.entries(size?.body ?? {}).map(([id, cm]) => [id, cm + aside])),
      };
    }),
  });
}

async function tell(): Promise<void> {
  const [tester] = testers;
  if (tester === undefined) throw new Error("no tester was seeded");
  const application = await database().application.findFirstOrThrow({ where: { callId } });
  const key = linkKey("tester", { id: tester.id, version: 1 });
  const testerCookie = `${testerCookieName(tester.id)}=${key}`;
  const seeded = {
    ...{ callId, testerId: tester.id, applicationId: application.id, applicationLink: applicationLink(application.id) },
    cookies: { designer: owner.cookie, tester: testerCookie, visitor: "", newcomer: nobody.cookie },
  };
  console.log(`seeded: ${JSON.stringify(seeded)}`);
}
