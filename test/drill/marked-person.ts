import { randomUUID } from "node:crypto";
import { Readable } from "node:stream";
import sharp from "sharp";
import { mailSignInLink } from "@/features/accounts/email-links/ask-mutations";
import { writeMessages } from "@/features/mail/mutations";
import { recordSeen } from "@/features/recruiting/views/seen-data";
import { storeMilestone } from "@/features/testing/home/milestone-mutations";
import { mailOwnLinks } from "@/features/testing/lost-links/lost-link-mutations";
import { receivePhoto, storeConsent } from "@/features/testing/photos/photo-mutations";
import { saveFields } from "@/features/testing/report/draft-mutations";
import { database } from "@/server/database";
import { inTransaction } from "@/server/transaction";
import type { TesterAccess } from "@/features/testing/home/access";
import type { Viewer } from "@/server/viewer";
import { reader } from "../factories/call";
import { makeTester } from "../database/make-tester";
import { makeViewer } from "../database/make-account";
import { makePublishedCall, type PublishedCallMade } from "../database/published-call";

export interface MarkedPerson {
  readonly made: PublishedCallMade;
  readonly access: TesterAccess;
  /** Null where they test by their link alone. */
  readonly viewer: Viewer | null;
}

/** A tester of a call of their own who wrote the marker into every field that takes text, and was written about with it. */
export async function makeMarkedPerson(
  marker: string,
  { withAccount }: { withAccount: boolean },
): Promise<MarkedPerson> {
  const made = await makePublishedCall();
  const revision = await database().revision.findFirstOrThrow({ where: { patternId: made.patternId } });
  const viewer = withAccount ? await markedAccount(marker) : null;
  const tester = await makeTester({ designer: made.owner, call: made.access, revisionId: revision.id });
  const access = { ...tester, accountId: viewer?.accountId ?? null } as TesterAccess;
  const applicationId = await apply(made, { marker, viewer });
  const email = `${marker}@example.org`;
  await database().tester.update({
    where: { id: access.testerId },
    data: { applicationId, accountId: access.accountId, note: `Likes ${marker}` },
  });
  await database().testerContact.create({
    data: { testerId: access.testerId, name: `Ann ${marker}`, email, creditName: `A. ${marker}` },
  });
  await report(access, { marker, revisionId: revision.id });
  await say(access, { made, marker, revisionId: revision.id });
  await sendPhoto(access, marker);
  await recordSeen(made.access, { kind: "page", testers: [access.testerId] });
  await mailOwnLinks(email);
  return { made, access, viewer };
}

async function markedAccount(marker: string): Promise<Viewer> {
  const viewer = await makeViewer(`Ann ${marker}`);
  const email = `account-${marker}@example.org`;
  await database().account.update({ where: { id: viewer.accountId }, data: { email, emailVerifiedAt: new Date() } });
  await mailSignInLink(email);
  return { ...viewer, email };
}

async function apply(
  { callId }: PublishedCallMade,
  { marker, viewer }: { marker: string; viewer: Viewer | null },
): Promise<string> {
  const [yarn, tool, handle, pastWork] = ["yarn", "tool", "handle", "past"].map((field) => `${field} ${marker}`);
  const { id } = await database().application.create({
    data: {
      ...{ callId, position: 0, accountId: viewer?.accountId ?? null, agreementVersion: 1, agreedAt: new Date() },
      idempotencyKey: randomUUID(),
      document: {
        ...{ accepts: null, prefers: [], forAnother: false, unit: "cm", terms: "us", timeZone: null },
        ...{ yarn, tool, experience: "some", handle, pastWork },
      },
      contact: { create: { callId, name: `Ann ${marker}`, email: `${marker}@example.org` } },
      body: { create: { measurements: { bust: 97 }, typed: { bust: `97 ${marker}` } } },
    },
  });
  return id;
}

interface Work {
  readonly marker: string;
  readonly revisionId: string;
}

async function report(access: TesterAccess, { marker, revisionId }: Work): Promise<void> {
  const { testerId } = access;
  await saveFields(access, [{ field: "fit.bust.says", was: "", becomes: `tight ${marker}` }]);
  const { id: _id, ...document } = reader(
    "x",
    { bust: 101 },
    {
      fit: [{ area: "bust", scale: 1, says: `tight ${marker}` }],
      yarn: [{ yarn: "main", grams: 200, metresPer100g: 300, label: `wool ${marker}` }],
    },
  );
  for (const version of [1, 2])
    await database().report.create({
      data: { testerId, version, revisionId, document, typed: { yarn: marker }, idempotencyKey: randomUUID() },
    });
  const reports = await database().report.findMany({ where: { testerId }, select: { id: true } });
  await database().decision.createMany({
    data: reports.map(({ id: reportId }) => ({
      ...{ reportId, part: "readings" as const, position: 0, decision: "keep" as const },
      ...{ usedCm: 100, reason: `said ${marker}`, decidedAt: new Date() },
    })),
  });
}

/** What they wrote and were asked; the answered question says nothing of them, for it stays. */
async function say(access: TesterAccess, { made, marker, revisionId }: Work & { made: PublishedCallMade }) {
  const { testerId, callId } = access;
  const words = { testerId, revisionId, place: { block: 0 } };
  await storeMilestone(access, { status: "behind", note: `ill ${marker}`, idempotencyKey: randomUUID() });
  await database().question.create({
    data: { ...words, callId, asks: `How ${marker}?`, idempotencyKey: randomUUID() },
  });
  await database().question.create({
    data: {
      ...{ ...words, callId, asks: "Which row?", answer: "Row 3.", answeredAt: new Date() },
      ...{ answeredById: made.owner.accountId, idempotencyKey: randomUUID() },
    },
  });
  await database().troubleSpot.create({
    data: { ...words, happened: `lost ${marker}`, did: `again ${marker}`, idempotencyKey: randomUUID() },
  });
  const asked = { testerId, field: "hours", about: marker, asks: `Really, ${marker}?`, answeredAt: new Date() };
  await database().numberQuestion.createMany({
    data: [
      { ...asked, answer: `Yes ${marker}`, idempotencyKey: randomUUID() },
      { ...asked, changedTo: marker, idempotencyKey: randomUUID() },
    ],
  });
  await database().reward.create({ data: { testerId, payment: `20 to ${marker}` } });
  const content = { subject: marker, name: marker, parts: [{ quote: marker }], from: null, because: "as a test" };
  const about = { callId, testerId };
  await inTransaction((transaction) =>
    writeMessages(transaction, [
      { kind: "designer-wrote", address: `${marker}@example.org`, content, about },
      { kind: "place-given-back", address: made.owner.email, content, about },
    ]),
  );
}

/** A photo with the marker in what the camera wrote, and in its note. */
async function sendPhoto(access: TesterAccess, marker: string): Promise<void> {
  const image = sharp({ create: { width: 400, height: 300, channels: 3, background: "#9c2430" } });
  const bytes = await image
    .jpeg()
    .withExif({ IFD0: { Artist: marker, ImageDescription: marker } })
    .toBuffer();
  if (!bytes.includes(marker)) throw new Error("the photo holds no marker");
  const sent = { photoId: randomUUID(), view: "problem" as const, note: `here ${marker}` };
  await receivePhoto({ tester: access }, sent, Readable.from([bytes]));
  await storeConsent(access, ["social_media"]);
}
