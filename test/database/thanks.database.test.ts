import { expect, it } from "vitest";
import { readDraft } from "@/features/testing/report/data";
import { saveFields } from "@/features/testing/report/draft-mutations";
import { sendReport } from "@/features/testing/report/send/send-mutations";
import { forgetTester } from "@/features/testing/home/forget-mutations";
import type { TesterAccess } from "@/features/testing/home/access";
import { creditNames, readThanks } from "@/features/testing/thanks/thanks-data";
import { noteRewards, storeCreditName } from "@/features/testing/thanks/thanks-mutations";
import { callAccess } from "@/features/calls/access";
import { database } from "@/server/database";
import { callDocument } from "../factories/call";
import { patternDocument } from "../factories/pattern";
import { makeAccount } from "./make-account";
import { makeCall, makeTester, type TestedCall } from "./make-tester";

const SENT_AT = new Date("2027-04-02T09:00:00Z");
const { sizes } = patternDocument();

async function reporting(called: TestedCall, name: string, size = "small"): Promise<TesterAccess> {
  const tester = await makeTester(called, { size });
  const { testerId } = tester;
  await database().testerContact.create({ data: { testerId, name } });
  await saveFields(tester, [{ field: "hours", was: "", becomes: "3" }]);
  await sendReport(tester, (await readDraft(tester)).version);
  return tester;
}

it("names nobody who has not said so, and the others as they say, in the order wanted", async () => {
  const called = await makeCall(callDocument([]));
  const large = present(sizes.at(-1)).id;
  const first = await reporting(called, "Zora Quill", large);
  const second = await reporting(called, "Ada Winter");
  const third = await reporting(called, "Silent One");
  await reporting(called, "Not Asked");
  await storeCreditName(first, "Zora Q.");
  await storeCreditName(second, "Ada");
  await storeCreditName(third, "");
  const names = async (order: "name" | "size" | "report") => await creditNames(called.call, { order, sizes });
  expect(await names("name")).toEqual(["Ada", "Zora Q."]);
  expect(await names("report")).toEqual(["Zora Q.", "Ada"]);
  expect(await names("size")).toEqual(["Ada", "Zora Q."]);
  expect((await readThanks(called.call, 1)).counts).toEqual({ all: 4, patternSent: 0, named: 0, unsaid: 1 });
});

it("notes what several testers got once, takes it back, and leaves those without a report alone", async () => {
  const called = await makeCall(callDocument([]));
  const [one, other] = [await reporting(called, "One"), await reporting(called, "Other")];
  const working = await makeTester(called);
  const ids = [one, other, working].map(({ testerId }) => testerId);
  const note = async (step: Parameters<typeof noteRewards>[2]["step"], now: Date, payment = "") =>
    await noteRewards(called.call, ids, { step, payment, now });
  await note("pattern-sent", SENT_AT);
  await note("pattern-sent", new Date(SENT_AT.getTime() + 86_400_000));
  await note("payment", SENT_AT, "yarn paid");
  const { testers, counts } = await readThanks(called.call, 1);
  expect(testers.map(({ patternSentAt, payment }) => [patternSentAt, payment])).toEqual([
    [SENT_AT, "yarn paid"],
    [SENT_AT, "yarn paid"],
  ]);
  expect(counts).toMatchObject({ all: 2, patternSent: 2, named: 0 });
  await note("pattern-not-sent", SENT_AT);
  expect((await readThanks(called.call, 1)).counts.patternSent).toBe(0);
  expect(await database().reward.count({ where: { testerId: working.testerId } })).toBe(0);
});

it("shows and notes nothing for another designer, and lets no tester speak for another", async () => {
  const [called, elsewhere] = [await makeCall(), await makeCall()];
  const theirs = await reporting(called, "One");
  await noteRewards(elsewhere.call, [theirs.testerId], { step: "named", payment: "", now: SENT_AT });
  expect((await readThanks(called.call, 1)).counts.named).toBe(0);
  expect((await readThanks(elsewhere.call, 1)).testers).toEqual([]);
  const stranger = await makeAccount();
  await expect(
    callAccess({ ...stranger, accountId: stranger.id, unit: "cm" }, called.call.callId, "viewer"),
  ).rejects.toMatchObject({
    code: "not-found",
  });
  const other = await reporting(called, "Other");
  await expect(storeCreditName({ ...other, testerId: theirs.testerId, linkVersion: 7 }, "Mine")).rejects.toMatchObject({
    code: "not-found",
  });
});

it("keeps neither the name nor the note of somebody who deletes their data", async () => {
  const called = await makeCall();
  const tester = await reporting(called, "One");
  await storeCreditName(tester, "One of them");
  await noteRewards(called.call, [tester.testerId], { step: "payment", payment: "40 to their account", now: SENT_AT });
  await forgetTester(tester);
  expect(await database().reward.count({ where: { testerId: tester.testerId } })).toBe(0);
  expect(await creditNames(called.call, { order: "name", sizes })).toEqual([]);
});

function present<Value>(value: Value | undefined): Value {
  if (value === undefined) throw new Error("expected a value");
  return value;
}
