import { beforeEach, describe, expect, it } from "vitest";
import type { TesterAccess } from "@/features/testing/home/access";
import { readTester } from "@/features/testing/home/data";
import { goOnAfterAll, stopTest } from "@/features/testing/home/milestone-mutations";
import { nextThing } from "@/features/testing/home/next-thing";
import { readDraft } from "@/features/testing/report/data";
import { saveFields } from "@/features/testing/report/draft-mutations";
import { database } from "@/server/database";
import { randomUUID } from "node:crypto";
import { readTheirTest } from "../../src/features/testing/progress/own-days-data";
import { endTest, letGoOn, setOwnDays } from "../../src/features/testing/progress/person-mutations";
import { progressRows, readCallTime } from "../../src/features/testing/progress/progress-data";
import { progressList } from "../../src/features/testing/progress/progress-list-data";
import { progressQuerySchema } from "../../src/features/testing/progress/progress-query";
import { patternDocument } from "../factories/pattern";
import { joinCall, makePublishedCall, type PublishedCallMade } from "./published-call";
import { makeTester } from "./make-tester";

let made: PublishedCallMade;
let ann: TesterAccess;

beforeEach(async () => {
  made = await makePublishedCall();
  const revision = await database().revision.findFirstOrThrow({ where: { patternId: made.patternId } });
  ann = await makeTester({ designer: made.owner, call: made.access, revisionId: revision.id });
});

const write = () => saveFields(ann, [{ field: "hours", was: "", becomes: "3" }]);

/** Somebody else's call, and a helper who may only look. */
async function others() {
  const other = await makePublishedCall();
  return [other.access, (await joinCall(made, "viewer")).access];
}

describe("a test that the designer ends for one tester", () => {
  it("takes nothing more, is told to the tester, and goes on once the designer takes it back", async () => {
    await write();
    await endTest(made.access, ann.testerId);
    await expect(endTest(made.access, ann.testerId)).rejects.toMatchObject({ code: "changed-meanwhile" });
    expect(await readTheirTest(made.access, ann.testerId)).toMatchObject({ ended: "by designer" });
    await expect(write()).rejects.toThrow("The designer ended your test");
    const [tester, inHand] = [await readTester(ann), await readDraft(ann)];
    expect(inHand.ended).toBe("ended");
    const document = patternDocument();
    const loaded = { ...tester, size: { id: "small", label: "S" }, revision: { revisionId: "", number: 1, document } };
    expect(nextThing({ tester: loaded, steps: [], inHand }).title).toBe("Your test has ended");
    // It is not theirs to take back.
    await goOnAfterAll(ann, randomUUID());
    expect((await readDraft(ann)).ended).toBe("ended");
    await letGoOn(made.access, ann.testerId);
    expect((await readDraft(ann)).ended).toBeNull();
    await saveFields(ann, [{ field: "hours", was: "3", becomes: "4" }]);
  });

  it("leaves one who stopped themselves to decide that", async () => {
    await stopTest(ann, { note: "", idempotencyKey: randomUUID() });
    await expect(endTest(made.access, ann.testerId)).rejects.toMatchObject({ code: "changed-meanwhile" });
    await expect(letGoOn(made.access, ann.testerId)).rejects.toMatchObject({ code: "changed-meanwhile" });
    expect(await readTheirTest(made.access, ann.testerId)).toMatchObject({ ended: "by tester" });
  });

  it("is ended and taken back by no one else, and not once the test is closed", async () => {
    for (const access of await others()) {
      await expect(endTest(access, ann.testerId)).rejects.toThrow();
      await expect(setOwnDays(access, ann.testerId, null)).rejects.toThrow();
    }
    const [other] = await others();
    if (other === undefined) throw new Error("somebody else's call");
    expect(await readTheirTest(other, ann.testerId)).toBeNull();
    await endTest(made.access, ann.testerId);
    for (const access of await others()) await expect(letGoOn(access, ann.testerId)).rejects.toThrow();
    await database().call.update({ where: { id: made.callId }, data: { status: "closed" } });
    await expect(letGoOn(made.access, ann.testerId)).rejects.toMatchObject({ code: "closed" });
    const row = await database().tester.findUniqueOrThrow({ where: { id: ann.testerId } });
    expect(row).toMatchObject({ stoppedByDesigner: true, dates: null });
  });
});

describe("a tester's own days", () => {
  const days = { swatchBy: "2090-05-02", reportBy: "2090-07-20" };

  it("stand wherever the call's stood for them: on their pages, in progress, and for lateness", async () => {
    const before = await readTheirTest(made.access, ann.testerId);
    expect(before?.days?.isOwn).toBe(false);
    const { reportBy } = before?.days?.days ?? { reportBy: "" };
    expect(reportBy < days.reportBy).toBe(true);
    const query = progressQuerySchema.parse({});
    const late = async () => {
      const now = new Date("2090-04-20T12:00:00Z");
      const { needs } = await progressList(made.access, { pattern: patternDocument(), query, now });
      return needs.late ?? 0;
    };
    expect(await late()).toBe(1);
    await setOwnDays(made.access, ann.testerId, days);
    expect(await late()).toBe(0);
    const tester = await readTester(ann);
    expect(tester.dates?.reportBy.day).toBe(days.reportBy);
    const time = await readCallTime(made.access);
    const [row] = await progressRows(made.access, { testerIds: [ann.testerId], time });
    expect(row?.dates).toEqual(tester.dates);
    expect(await readTheirTest(made.access, ann.testerId)).toEqual({
      days: { days: { startOn: before?.days?.days.startOn, ...days }, isOwn: true },
      ended: null,
    });
    await setOwnDays(made.access, ann.testerId, null);
    expect(await readTheirTest(made.access, ann.testerId)).toEqual(before);
    expect(await late()).toBe(1);
  });
});
