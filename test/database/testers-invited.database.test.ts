import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { addReports } from "@/features/testing/report/mutations";
import { invitedAccess } from "@/features/recruiting/invitations/access";
import { readInvited } from "../../src/features/testing/invited/invited-data";
import { acceptInvited, declineInvited } from "../../src/features/testing/invited/invited-mutations";
import { invitedState } from "../../src/features/testing/invited/invited-state";
import { progressRows } from "../../src/features/testing/progress/progress-data";
import { progressList } from "../../src/features/testing/progress/progress-list-data";
import { progressQuerySchema } from "../../src/features/testing/progress/progress-query";
import {
  closeCall,
  inviteLonger,
  noteTester,
  renewLink,
  reopenCall,
  withdrawInvited,
} from "../../src/features/testing/progress/progress-mutations";
import { database, pool } from "@/server/database";
import { linkKey, linkTo } from "@/server/link-key";
import type { Viewer } from "@/server/viewer";
import { reader } from "../factories/call";
import { patternDocument } from "../factories/pattern";
import { makeViewer } from "./make-account";
import { CHOICES, held, inviteTo, makeCall, rowOf, WEEK } from "./invited-tester";

let designer: Viewer;
let access: CallAccess;

const invite = () => inviteTo(access);

async function stateFor(testerId: string, accountId: string | null, isLetIn = false) {
  return invitedState(await readInvited(await held(testerId)), { accountId, isLetIn }, new Date());
}

beforeEach(async () => {
  designer = await makeViewer("Ana");
  access = await makeCall(designer);
});

it("asks whoever did not apply who wears the garment, so that nobody shows a child's photos by mistake", async () => {
  const [testerId, again] = [await invite(), await invite()];
  expect(await readInvited(await held(testerId))).toMatchObject({ wearer: "self" });
  await acceptInvited(await held(testerId), { ...CHOICES, viewer: null, wearer: "child" });
  expect(await rowOf(testerId)).toMatchObject({ isWornByChild: true });

  // Somebody who is invited again after an earlier test, and leaves the answer as it is known.
  await database().tester.update({ where: { id: again }, data: { isWornByChild: true } });
  expect(await readInvited(await held(again))).toMatchObject({ wearer: "child" });
  await acceptInvited(await held(again), { ...CHOICES, viewer: null });
  expect(await rowOf(again)).toMatchObject({ isWornByChild: true });
});

describe("an invitation's link", () => {
  it("opens nothing with a key of another kind, of an older version, of another tester, or none", async () => {
    const [testerId, other] = [await invite(), await invite()];
    const guesses = [
      linkTo("tester", { id: testerId, version: 1 }),
      linkTo("application", { id: testerId, version: 1 }),
      linkTo("invitation", { id: testerId, version: 2 }),
      `${testerId}.${linkKey("invitation", { id: other, version: 1 })}`,
      `${testerId}.`,
      testerId,
      "",
    ];
    for (const guess of guesses) await expect(invitedAccess(guess), guess).rejects.toMatchObject({ code: "not-found" });
    await renewLink(access, testerId);
    await expect(invitedAccess(linkTo("invitation", { id: testerId, version: 1 }))).rejects.toMatchObject({
      code: "not-found",
    });
    await expect(held(testerId)).resolves.toMatchObject({ testerId, linkVersion: 2 });
  });

  it("is accepted once, with units, terms and time zone, however many taps come at once", async () => {
    const testerId = await invite();
    const link = await held(testerId);
    const taps = await Promise.all(Array.from({ length: 4 }, () => acceptInvited(link, { viewer: null, ...CHOICES })));
    expect(taps.filter(Boolean)).toHaveLength(1);
    expect(await rowOf(testerId)).toMatchObject({ accountId: null, ...CHOICES });
    expect(await stateFor(testerId, null)).toBe("go-on");
    expect(await stateFor(testerId, null, true)).toBe("own");
    expect(await declineInvited(link, null)).toBe(false);
  });

  it("is answered once if it is accepted and declined at the same time", async () => {
    const testerId = await invite();
    const link = await held(testerId);
    const answers = await Promise.all([acceptInvited(link, { viewer: null, ...CHOICES }), declineInvited(link, null)]);
    expect(answers.filter(Boolean)).toHaveLength(1);
  });

  it("is no good after its end, once withdrawn or declined, or when the call is closed; each is told", async () => {
    const [ended, withdrawn, declined, closed] = [await invite(), await invite(), await invite(), await invite()];
    await pool().query(
      "UPDATE tester SET invited_at = now() - interval '9 days', invitation_expires_at = now() WHERE id = $1",
      [ended],
    );
    await withdrawInvited(access, withdrawn);
    expect(await declineInvited(await held(declined), null)).toBe(true);
    expect(await stateFor(ended, null)).toBe("ended");
    expect(await stateFor(withdrawn, null)).toBe("withdrawn");
    expect(await stateFor(declined, null)).toBe("declined");
    await closeCall(access);
    expect(await stateFor(closed, null)).toBe("closed");
    for (const testerId of [ended, withdrawn, declined, closed])
      expect(await acceptInvited(await held(testerId), { viewer: null, ...CHOICES })).toBe(false);
    await reopenCall(access);
    expect(await acceptInvited(await held(closed), { viewer: null, ...CHOICES })).toBe(true);
    await expect(withdrawInvited(access, closed)).rejects.toMatchObject({ code: "changed-meanwhile" });
  });

  it("is valid again with a new link after a new invitation, and longer after an extension", async () => {
    const [declined, ended] = [await invite(), await invite()];
    await declineInvited(await held(declined), null);
    const old = linkTo("invitation", { id: declined, version: 1 });
    await inviteLonger(access, declined, new Date(Date.now() + WEEK));
    await expect(invitedAccess(old)).rejects.toMatchObject({ code: "not-found" });
    expect(await stateFor(declined, null)).toBe("open");
    await inviteLonger(access, ended, new Date(Date.now() + 2 * WEEK));
    expect(await rowOf(ended)).toMatchObject({ linkVersion: 1 });
  });

  it("of an applicant with an account is for that account alone", async () => {
    const [bea, sam] = [await makeViewer("Bea"), await makeViewer("Sam")];
    const testerId = await invite();
    await database().tester.update({ where: { id: testerId }, data: { accountId: bea.accountId } });
    expect(await stateFor(testerId, null)).toBe("sign-in");
    expect(await stateFor(testerId, sam.accountId)).toBe("another's");
    expect(await stateFor(testerId, bea.accountId)).toBe("open");
    const link = await held(testerId);
    for (const viewer of [null, sam]) {
      expect(await acceptInvited(link, { viewer, ...CHOICES })).toBe(false);
      expect(await declineInvited(link, viewer)).toBe(false);
    }
    expect(await acceptInvited(link, { viewer: bea, ...CHOICES })).toBe(true);
  });

  it("is one a person and call: an account that tests already takes no other place", async () => {
    const bea = await makeViewer("Bea");
    const [first, second] = [await invite(), await invite()];
    await acceptInvited(await held(first), { viewer: bea, ...CHOICES });
    await expect(acceptInvited(await held(second), { viewer: bea, ...CHOICES })).rejects.toMatchObject({
      code: "not-allowed",
    });
    expect(await acceptInvited(await held(second), { viewer: null, ...CHOICES })).toBe(true);
  });
});

describe("the designer's progress", () => {
  it("is written by nobody who only looks, and by no other designer", async () => {
    const testerId = await invite();
    const sam = await makeViewer("Sam");
    const elsewhere = await makeCall(sam);
    const vera = await makeViewer("Vera");
    await database().membership.create({
      data: { patternId: access.pattern.patternId, accountId: vera.accountId, role: "viewer" },
    });
    const looks = await callAccess(vera, access.callId, "viewer");
    const asked = { pattern: patternDocument(), query: progressQuerySchema.parse({}), now: new Date() };
    const time = { timeZone: "UTC", dates: null };
    expect((await progressList(elsewhere, asked)).people).toEqual([]);
    expect(await progressRows(elsewhere, { testerIds: [testerId], time, now: new Date() })).toEqual([]);
    expect((await progressList(looks, asked)).people).toHaveLength(1);
    for (const theirs of [elsewhere, looks]) {
      await expect(noteTester(theirs, testerId, "x")).rejects.toMatchObject({ code: "not-found" });
      await expect(renewLink(theirs, testerId)).rejects.toMatchObject({ code: "not-found" });
      await expect(withdrawInvited(theirs, testerId)).rejects.toMatchObject({ code: "changed-meanwhile" });
    }
    await expect(closeCall(looks)).rejects.toMatchObject({ code: "changed-meanwhile" });
    await expect(inviteLonger(looks, testerId, new Date(Date.now() + WEEK))).rejects.toMatchObject({ code: "closed" });
    await expect(callAccess(sam, access.callId, "viewer")).rejects.toMatchObject({ code: "not-found" });
  });

  it("lets the designer test a size, once", async () => {
    const testerId = await inviteTo(access, designer);
    expect(await rowOf(testerId)).toMatchObject({ accountId: designer.accountId });
    await expect(inviteTo(access, designer)).rejects.toMatchObject({ code: "not-allowed" });
  });

  it("closes the call either before or after what is being sent: it is in, or told", async () => {
    const { id: revisionId } = await database().revision.findFirstOrThrow({
      where: { patternId: access.pattern.patternId },
    });
    const revision = { revisionId, document: patternDocument() };
    const send = (id: string) =>
      addReports(access, {
        revision,
        reports: [{ tester: reader(id, { bust: 100 }), typed: {}, idempotencyKey: randomUUID() }],
      });
    const outcomes = await Promise.allSettled([send("one"), closeCall(access), send("two")]);
    const sent = [outcomes[0], outcomes[2]].filter((outcome) => outcome?.status === "fulfilled").length;
    expect(await database().report.count({ where: { tester: { callId: access.callId } } })).toBe(sent);
    await expect(send("three")).rejects.toMatchObject({ code: "closed" });
    await expect(invite()).rejects.toMatchObject({ code: "closed" });
  });
});
