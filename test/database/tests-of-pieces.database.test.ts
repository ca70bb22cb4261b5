import { beforeEach, expect, it } from "vitest";
import { callAccess } from "@/features/calls/access";
import { readPublished } from "@/features/recruiting/listing/data";
import { publishedCall } from "@/features/recruiting/listing/access";
import { mailedTesters } from "@/features/recruiting/invitations/mailed-tester-data";
import { offerContent } from "@/features/recruiting/invitations/offer-computed";
import { fieldOf } from "@/engine/reporting";
import { readDraft } from "@/features/testing/report/data";
import { saveFields } from "@/features/testing/report/draft-mutations";
import { sendReport } from "@/features/testing/report/send/send-mutations";
import { database } from "@/server/database";
import { storePieces } from "../../src/features/testing/again/again-mutations";
import { mayAnswer } from "../../src/features/testing/corrections/may-answer";
import { readTester } from "../../src/features/testing/home/data";
import { progressList } from "../../src/features/testing/progress/progress-list-data";
import { piecedPattern } from "../factories/pieced-pattern";
import { makeViewer } from "./make-account";
import { makeTester } from "./make-tester";
import { makePublishedCall, type PublishedCallMade } from "./published-call";

const pattern = piecedPattern();
let made: PublishedCallMade;

async function tester() {
  const { id: revisionId } = await database().revision.findFirstOrThrow({ where: { patternId: made.patternId } });
  return await makeTester({ designer: made.owner, call: made.access, revisionId });
}

beforeEach(async () => {
  made = await makePublishedCall({ pattern });
});

it("asks testers of a sleeve for nothing of the body, and says so where they read of the test", async () => {
  await storePieces(made.access, ["sleeve"]);
  const access = await tester();
  const { context, savedPattern } = await readDraft(access);
  expect(context.pattern.measurements.map(({ id }) => id)).toEqual(["upper-arm", "sleeve-length"]);
  expect(savedPattern.measurements).toHaveLength(pattern.measurements.length);
  const published = await readPublished(await publishedCall(made.callId));
  expect([published.pieces, published.tested.garment.pieces.map(({ id }) => id)]).toEqual(["Sleeve", ["sleeve"]]);
  expect((await readTester(access)).call.pieces).toEqual(["sleeve"]);
  await database().testerContact.create({
    data: { testerId: access.testerId, name: "Bea", email: "bea@example.org" },
  });
  const [mailed] = await mailedTesters(database(), { id: access.testerId });
  if (mailed === undefined) throw new Error("they have an address");
  expect(JSON.stringify(offerContent(mailed.tester))).toContain('["You make only","Sleeve"]');
});

it("has everything of a tester who sent all of the piece", async () => {
  await storePieces(made.access, ["sleeve"]);
  const access = await tester();
  expect(mayAnswer(await readDraft(access))).toBe(true);
  const typed = ["upper-arm", "sleeve-length"].flatMap((id) => [
    { field: fieldOf.reading(id, "1", "value"), was: "", becomes: "40" },
    { field: fieldOf.reading(id, "1", "state"), was: "", becomes: "washed" },
  ]);
  await saveFields(access, typed);
  await sendReport(access, (await readDraft(access)).version);
  expect(mayAnswer(await readDraft(access))).toBe(false);
  const list = await progressList(made.access, { pattern, query: { page: 1 }, now: new Date() });
  expect(list.people.map(({ state }) => state)).toEqual(["reported"]);
  expect(list.counts).toEqual([{ size: "small", state: "reported", many: 1 }]);
});

it("is of the whole garment with all pieces or none, and of no piece that nothing is measured on", async () => {
  const pieces = async () => (await database().call.findUniqueOrThrow({ where: { id: made.callId } })).pieces;
  await storePieces(made.access, ["sleeve", "unknown"]);
  expect(await pieces()).toEqual(["sleeve"]);
  await storePieces(made.access, ["body", "sleeve"]);
  expect(await pieces()).toEqual([]);
  const vera = await makeViewer("Vera");
  await database().membership.create({
    data: { patternId: made.patternId, accountId: vera.accountId, role: "viewer" },
  });
  const looks = await callAccess(vera, made.callId, "viewer");
  await expect(storePieces(looks, ["sleeve"])).rejects.toMatchObject({ code: "closed" });
});
