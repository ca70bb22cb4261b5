import { beforeAll, describe, expect, it } from "vitest";
import { readDraft } from "@/features/testing/report/data";
import { saveFields } from "@/features/testing/report/draft-mutations";
import type { TesterAccess } from "@/features/testing/home/access";
import { database } from "@/server/database";
import { callDocument, reader } from "../factories/call";
import { makeCall, makeTester, type TestedCall } from "./make-tester";

let called: TestedCall;

beforeAll(async () => {
  called = await makeCall(callDocument([reader("brought", { bust: 101 })]));
});

const typed = async (access: TesterAccess) => (await readDraft(access)).typed;
const change = (field: string, becomes: string | null, was = "") => ({ field, was, becomes });
const BUST = "reading.bust.1.value";
const LENGTH = "reading.length.1.value";

describe("a tester's draft", () => {
  it("keeps each field as it was typed, and the same sent twice changes nothing", async () => {
    const ann = await makeTester(called);
    const changes = [change(BUST, "38,5"), change(LENGTH, "12 3/8 in"), change("fit.bust.says", "رائع 🧶 <b>")];
    expect(await saveFields(ann, changes)).toEqual({ clashes: [], refused: [] });
    expect(await typed(ann)).toEqual({ [BUST]: "38,5", [LENGTH]: "12 3/8 in", "fit.bust.says": "رائع 🧶 <b>" });
    const { version } = await readDraft(ann);
    expect(await saveFields(ann, changes)).toEqual({ clashes: [], refused: [] });
    expect((await readDraft(ann)).version).toBe(version);
  });

  it("takes in what two devices typed field by field, and asks where both changed one", async () => {
    const ann = await makeTester(called);
    await saveFields(ann, [change(BUST, "50")]);
    // The phone has 50 and writes 39; the tablet, which has 50 too, writes 38 and something else besides.
    await saveFields(ann, [change(BUST, "39", "50")]);
    const late = await saveFields(ann, [change(BUST, "38", "50"), change("hours", "12")]);
    expect(late.clashes).toEqual([{ field: BUST, there: "39", here: "38" }]);
    expect(await typed(ann)).toEqual({ [BUST]: "39", hours: "12" });
    // The tester chooses the tablet's text.
    expect(await saveFields(ann, [change(BUST, "38", "39")])).toEqual({ clashes: [], refused: [] });
    expect(await typed(ann)).toEqual({ [BUST]: "38", hours: "12" });
  });

  it("loses nothing that two devices send at the same moment", async () => {
    const ann = await makeTester(called);
    const fields = Array.from({ length: 12 }, (_, at) => `swatch.${at + 1}.stitches`);
    await Promise.all(fields.map((field) => saveFields(ann, [change(field, "20")])));
    expect(Object.keys(await typed(ann)).toSorted()).toEqual(fields.toSorted());
    const both = await Promise.all([
      saveFields(ann, [change("hours", "10")]),
      saveFields(ann, [change("hours", "11")]),
    ]);
    expect(both.flatMap(({ clashes }) => clashes)).toHaveLength(1);
  });

  it("refuses fields that no report has and texts that cannot be stored, and keeps the others", async () => {
    const ann = await makeTester(called);
    const { refused } = await saveFields(ann, [
      change("password", "x"),
      change("__proto__", "x"),
      change("fit.bust.says", "x".repeat(2_001)),
      change("swatch.1.stitches", "20\u0000"),
      change("hours", "x".repeat(2_000)),
    ]);
    expect(refused.map(({ field }) => field)).toEqual(["password", "__proto__", "fit.bust.says", "swatch.1.stitches"]);
    expect(Object.keys(await typed(ann))).toEqual(["hours"]);
  });

  it("drops the confirmation of a number when the number changes", async () => {
    const ann = await makeTester(called);
    await saveFields(ann, [change(BUST, "52"), change("reading.bust.1.kept", "yes")]);
    await saveFields(ann, [change("hours", "3")]);
    expect(await typed(ann)).toMatchObject({ "reading.bust.1.kept": "yes" });
    await saveFields(ann, [change(BUST, "53", "52")]);
    expect(await typed(ann)).toEqual({ [BUST]: "53", hours: "3" });
  });

  it("takes a field away, unless another device has changed it", async () => {
    const ann = await makeTester(called);
    await saveFields(ann, [change("swatch.2.stitches", "20"), change("swatch.2.rows", "25")]);
    const taken = await saveFields(ann, [change("swatch.2.stitches", null, "20"), change("swatch.2.rows", null, "24")]);
    expect(taken.clashes).toEqual([{ field: "swatch.2.rows", there: "25", here: null }]);
    expect(await typed(ann)).toEqual({ "swatch.2.rows": "25" });
  });

  it("rejects another tester, and a link that was revoked", async () => {
    const [ann, bea] = [await makeTester(called), await makeTester(called)];
    await saveFields(ann, [change(BUST, "50")]);
    const gone = { code: "not-found" };
    const other = await makeCall();
    await expect(saveFields({ ...ann, callId: other.call.callId }, [change(BUST, "1")])).rejects.toMatchObject(gone);
    await expect(saveFields({ ...ann, linkVersion: 2 }, [change(BUST, "1")])).rejects.toMatchObject(gone);
    await expect(readDraft({ ...ann, linkVersion: 2 })).rejects.toMatchObject(gone);
    expect(await typed(bea)).toEqual({});
    expect(await typed(ann)).toEqual({ [BUST]: "50" });
  });

  it("refuses changes after stopping or once the call is closed, and says which", async () => {
    const mine = await makeCall();
    const [ann, bea] = [await makeTester(mine), await makeTester(mine)];
    await saveFields(ann, [change(BUST, "50")]);
    await database().tester.update({ where: { id: bea.testerId }, data: { stoppedAt: new Date() } });
    await expect(saveFields(bea, [change(BUST, "51")])).rejects.toThrow("You have stopped this test");
    await database().call.update({ where: { id: mine.call.callId }, data: { status: "closed" } });
    await expect(saveFields(ann, [change(BUST, "51", "50")])).rejects.toThrow("This test is closed");
    expect(await typed(ann)).toEqual({ [BUST]: "50" });
    expect((await readDraft(ann)).ended).toBe("closed");
    expect((await readDraft(bea)).ended).toBe("stopped");
  });

  it("of a tester whose report was brought in starts from that report", async () => {
    const { id: testerId, callId } = await database().tester.findFirstOrThrow({
      where: { code: "brought", callId: called.call.callId },
    });
    await database().tester.update({
      where: { id: testerId },
      data: {
        ...{ revisionId: called.revisionId, invitedAt: new Date(), acceptedAt: new Date() },
        invitationExpiresAt: new Date(Date.now() + 86_400_000),
      },
    });
    const brought = { testerId, callId, accountId: null, linkVersion: 1 } as TesterAccess;
    // By hand from the factory: 20 stitches and 25 rows over 10 cm, washed; the bust read at 101.
    expect(await typed(brought)).toMatchObject({ [BUST]: "101", "swatch.1.stitches": "20", "swatch.1.washed": "yes" });
    await saveFields(brought, [change(BUST, "102", "101")]);
    expect(await typed(brought)).toMatchObject({ [BUST]: "102", "swatch.1.rows": "25" });
  });
});
