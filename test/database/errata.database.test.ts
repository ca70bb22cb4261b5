import { randomUUID } from "node:crypto";
import { beforeEach, expect, it } from "vitest";
import { callAccess } from "@/features/calls/access";
import { saveRevision } from "@/features/patterns/mutations";
import { publishedVersions } from "@/features/patterns/published-data";
import { publishCorrection } from "@/features/testing/corrections/correction-mutations";
import { takeIn } from "@/features/testing/corrections/take-in-mutations";
import { agreedSharing } from "@/features/testing/photos/sharing-data";
import { database } from "@/server/database";
import { correctionsIn, readErrata } from "../../src/features/testing/errata/errata-data";
import { errataCsv, errataText } from "../../src/features/testing/errata/errata-text";
import { markPublished, unmarkPublished } from "../../src/features/testing/errata/publish-mutations";
import { patternDocument } from "../factories/pattern";
import { callDocument } from "../factories/call";
import { makeCall, makeTester, type TestedCall } from "./make-tester";
import { makeViewer } from "./make-account";

// Before the settings are first read; nothing is sent here.
process.env.SMTP_URL = "smtp://127.0.0.1:9";
process.env.MAIL_FROM = "mail@sizes.example";

const DAY_MS = 24 * 60 * 60 * 1_000;
const pattern = patternDocument();
const [count] = pattern.counts;
const was = count === undefined ? 0 : (pattern.grading?.[count.id]?.small ?? 0);

let called: TestedCall;

beforeEach(async () => {
  called = await makeCall(callDocument([]));
});

const mark = async (revisionNumber: number, label: string, publishedAt = new Date()) =>
  await markPublished(called.call.pattern, { revisionNumber, label, publishedAt });

async function correct(text: string, becomes?: number): Promise<string> {
  const numbers = becomes === undefined ? [] : [{ count: count?.id ?? "", size: "small", was, becomes }];
  const idempotencyKey = randomUUID();
  const sizes = becomes === undefined ? [] : ["small"];
  const { id: revisionId } = await database().revision.findFirstOrThrow({
    where: { patternId: called.call.pattern.patternId },
    orderBy: { number: "desc" },
  });
  await publishCorrection(called.call, { text, revisionId, place: null, numbers, sizes, idempotencyKey });
  return (await database().correction.findUniqueOrThrow({ where: { idempotencyKey } })).id;
}

it("lists corrections since the first published version, each by its version and what has it right", async () => {
  const { pattern: access } = called.call;
  const inTest = await correct("Found in the test.", was + 2);
  expect(await readErrata(access, { pattern })).toEqual([]);
  expect(await mark(1, "1.0")).toBe("published");
  const first = await correct("The first, a word.");
  const second = await correct("The second, a number.", was + 4);
  await takeIn(called.call, { correctionIds: [inTest, second], baseNumber: 1 });
  expect(await readErrata(access, { pattern })).toMatchObject([
    { correctionId: second, version: "1.0", sizes: ["S"], rightIn: null, foundInRevision: null },
    { correctionId: first, version: "1.0", sizes: [], numbers: [], rightIn: null },
  ]);
  expect(await mark(2, "1.1")).toBe("published");
  await correct("Of the newer version.");
  const errata = await readErrata(access, { pattern });
  expect(errata.map(({ version, rightIn }) => [version, rightIn])).toEqual([
    ["1.1", null],
    ["1.0", "1.1"],
    ["1.0", null],
  ]);
  const { id: revisionId } = await database().revision.findFirstOrThrow({
    where: { patternId: access.patternId, number: 2 },
  });
  expect((await correctionsIn(access, { revisionId, pattern })).map(({ text }) => text)).toEqual([
    "Found in the test.",
    "The second, a number.",
  ]);
  expect(errataText("Vest", errata)).toContain(`, S: ${was + 4} (not ${was})`);
  // A row for the number, one for each of the two without, and the head.
  expect(errataCsv(errata).split("\r\n")).toHaveLength(4);
});

it("says where an erratum was found in a revision that is later than the published one", async () => {
  const { pattern: access } = called.call;
  await mark(1, "1.0");
  await saveRevision(access, { document: patternDocument({ name: "Another" }), reason: "next", baseNumber: 1 });
  await correct("Of the next revision.");
  expect(await readErrata(access, { pattern })).toMatchObject([{ version: "1.0", foundInRevision: 2 }]);
});

it("is published once a revision, by a label of its own, and for editors alone", async () => {
  const { pattern: access } = called.call;
  await saveRevision(access, { document: patternDocument({ name: "Another" }), reason: "next", baseNumber: 1 });
  await mark(1, "1.0", new Date(Date.now() - DAY_MS));
  await expect(mark(1, "1.0")).rejects.toMatchObject({ code: "changed-meanwhile" });
  expect(await mark(2, "1.0")).toBe("taken");
  await expect(mark(3, "2.0")).rejects.toMatchObject({ code: "not-found" });
  const vera = await makeViewer("Vera");
  await database().membership.create({
    data: { patternId: access.patternId, accountId: vera.accountId, role: "viewer" },
  });
  const looks = (await callAccess(vera, called.call.callId, "viewer")).pattern;
  const elsewhere = (await makeCall()).call.pattern;
  const [version] = await publishedVersions(access);
  const version2 = { revisionNumber: 2, label: "2.0", publishedAt: new Date() };
  await expect(markPublished(looks, version2)).rejects.toMatchObject({ code: "not-found" });
  await expect(unmarkPublished(looks, version?.versionId ?? "")).rejects.toMatchObject({ code: "not-found" });
  await unmarkPublished(elsewhere, version?.versionId ?? "");
  expect(await publishedVersions(access)).toHaveLength(1);
  expect(await publishedVersions(elsewhere)).toEqual([]);
  await unmarkPublished(access, version?.versionId ?? "");
  expect(await publishedVersions(access)).toEqual([]);
});

it("tells those who reported and agreed to wait for the release, once", async () => {
  const { callId } = called.call;
  const [waits, free, working] = [await makeTester(called), await makeTester(called), await makeTester(called)];
  await database().agreement.createMany({
    data: [
      { callId, version: 1, text: "Wait.", progressPhotos: "never", finishedPhotos: "release" },
      { callId, version: 2, text: "Free.", progressPhotos: "any", finishedPhotos: "any" },
    ],
  });
  const said = { accepts: null, prefers: [], forAnother: false, yarn: "", tool: "", unit: "cm", terms: "us" };
  for (const [position, { testerId }] of [waits, free, working].entries()) {
    await database().testerContact.create({
      data: { testerId, name: `Tester ${position}`, email: `tester${position}@example.org` },
    });
    await database().application.create({
      data: {
        ...{ callId, position, agreementVersion: position === 1 ? 2 : 1, agreedAt: new Date() },
        ...{ idempotencyKey: randomUUID(), tester: { connect: { id: testerId } } },
        document: { ...said, timeZone: null, experience: "first", handle: "", pastWork: "" },
      },
    });
    if (position < 2) await database().tester.update({ where: { id: testerId }, data: { reportedAt: new Date() } });
  }
  expect(await agreedSharing(waits)).toMatchObject({ finishedPhotos: "release", isReleased: false });
  await mark(1, "1.0");
  expect(await agreedSharing(waits)).toMatchObject({ progressPhotos: "never", isReleased: true });
  const told = async () =>
    (await database().message.findMany({ where: { callId, kind: "pattern-released" } })).map(({ address }) => address);
  expect(await told()).toEqual(["tester0@example.org"]);
  const [version] = await publishedVersions(called.call.pattern);
  await unmarkPublished(called.call.pattern, version?.versionId ?? "");
  await mark(1, "1.0");
  expect(await told()).toHaveLength(1);
});
