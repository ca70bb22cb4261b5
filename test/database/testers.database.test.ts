import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { createCall } from "@/features/calls/mutations";
import { patternAccess } from "@/features/patterns/access";
import { createPattern } from "@/features/patterns/mutations";
import { addReports } from "@/features/reports/mutations";
import {
  invitationLink,
  invitedAccess,
  testerAccess,
  type InvitedAccess,
  type TesterAccess,
} from "@/features/testers/access";
import { forgetTester } from "@/features/testers/forget-mutations";
import { readInvited } from "@/features/testers/invited-data";
import { acceptInvited, bindToAccount, declineInvited } from "@/features/testers/invited-mutations";
import { invitedState } from "@/features/testers/invited-state";
import { goOnAfterAll, sayMilestone, stopTest } from "@/features/testers/milestone-mutations";
import { setTesterPassword } from "@/features/testers/password-mutations";
import { progressRows } from "@/features/testers/progress-data";
import {
  closeCall,
  inviteByHand,
  inviteLonger,
  noteTester,
  renewLink,
  reopenCall,
  withdrawInvited,
} from "@/features/testers/progress-mutations";
import { database, pool } from "@/server/database";
import { linkKey, linkTo } from "@/server/link-key";
import { inTransaction } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { reader } from "../factories/call";
import { patternDocument } from "../factories/pattern";
import { makeAccount } from "./make-account";

// Who asks is what a request's cookies say; there is no request here.
const browser = vi.hoisted(() => ({ cookies: new Map<string, string>(), viewer: null as unknown }));
vi.mock("next/headers", () => ({
  cookies: () => Promise.resolve({ get: (name: string) => ({ value: browser.cookies.get(name) }) }),
  headers: () => Promise.resolve(new Headers()),
}));
vi.mock("next/server", () => ({ connection: () => Promise.resolve() }));
vi.mock("next-auth", () => ({
  getServerSession: () => Promise.resolve(browser.viewer === null ? null : { user: browser.viewer }),
}));

const CHOICES = { unit: "in", terms: "uk", timeZone: "Asia/Tokyo" } as const;
const WEEK = 7 * 24 * 60 * 60 * 1_000;

let designer: Viewer;
let access: CallAccess;

async function makeViewer(name: string): Promise<Viewer> {
  const account = await makeAccount({ name });
  return { accountId: account.id, name, email: account.email, unit: "cm" };
}

async function makeCall(owner: Viewer): Promise<CallAccess> {
  const { patternId } = await createPattern(owner, { document: patternDocument(), reason: "first" });
  const pattern = await patternAccess(owner, patternId, "owner");
  const places = { small: { least: 1, wanted: 1 }, large: { least: 1, wanted: 1 } };
  const { callId } = await inTransaction((connection) => createCall(pattern, { title: "Test", places }, connection));
  return await callAccess(owner, callId, "owner");
}

/** Somebody who is invited. */
async function invite(change: { readonly self?: Viewer; readonly size?: string } = {}): Promise<string> {
  const { testerId } = await inviteByHand(access, {
    ...{ name: "Bea", email: "bea@example.org", size: change.size ?? "small" },
    ...{ endsAt: new Date(Date.now() + WEEK), self: change.self ?? null },
  });
  return testerId;
}

async function held(testerId: string): Promise<InvitedAccess> {
  const { linkVersion } = await rowOf(testerId);
  return await invitedAccess(invitationLink({ testerId, linkVersion }));
}

function rowOf(testerId: string) {
  return database().tester.findUniqueOrThrow({ where: { id: testerId } });
}

/** Who has accepted and was let in by her link. */
async function accepted(): Promise<{ testerId: string; own: TesterAccess }> {
  const testerId = await invite();
  await acceptInvited(await held(testerId), { viewer: null, ...CHOICES });
  letIn(testerId, 1);
  return { testerId, own: await testerAccess(testerId) };
}

function letIn(testerId: string, version: number): void {
  browser.cookies.set(`sizewright-tester-${testerId}`, linkKey("tester", { id: testerId, version }));
}

function signIn(viewer: Viewer | null): void {
  browser.viewer = viewer === null ? null : { accountId: viewer.accountId, sessionVersion: 1 };
}

async function stateFor(testerId: string, accountId: string | null, isLetIn = false) {
  return invitedState(await readInvited(await held(testerId)), { accountId, isLetIn }, new Date());
}

beforeEach(async () => {
  browser.cookies.clear();
  signIn(null);
  designer = await makeViewer("Ana");
  access = await makeCall(designer);
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

  it("is accepted once, with what her pages are to speak in, however many taps come at once", async () => {
    const testerId = await invite();
    const link = await held(testerId);
    const taps = await Promise.all(Array.from({ length: 4 }, () => acceptInvited(link, { viewer: null, ...CHOICES })));
    expect(taps.filter(Boolean)).toHaveLength(1);
    expect(await rowOf(testerId)).toMatchObject({ accountId: null, ...CHOICES });
    expect(await stateFor(testerId, null)).toBe("go-on");
    expect(await stateFor(testerId, null, true)).toBe("hers");
    expect(await declineInvited(link, null)).toBe(false);
  });

  it("is answered once where she accepts and declines at the same time", async () => {
    const testerId = await invite();
    const link = await held(testerId);
    const answers = await Promise.all([acceptInvited(link, { viewer: null, ...CHOICES }), declineInvited(link, null)]);
    expect(answers.filter(Boolean)).toHaveLength(1);
  });

  it("is no good after its end, once withdrawn or declined, or when the call is closed; each is told", async () => {
    const [ended, withdrawn, declined, closed] = [await invite(), await invite(), await invite(), await invite()];
    await pool().query(
      "UPDATE tester SET invited_at = now() - interval '9 days', invitation_ends_at = now() WHERE id = $1",
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

  it("stands again with a new link once she is invited again, and longer once its end is put off", async () => {
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

describe("a tester's own pages", () => {
  it("open to her browser's cookie until she has an account, then to its sign-in alone", async () => {
    const { testerId } = await accepted();
    const bea = await makeViewer("Bea");
    expect(await bindToAccount(await held(testerId), bea)).toBe(true);
    await expect(testerAccess(testerId)).rejects.toMatchObject({ code: "not-found" });
    signIn(bea);
    await expect(testerAccess(testerId)).resolves.toMatchObject({ accountId: bea.accountId });
    expect(await bindToAccount(await held(testerId), await makeViewer("Sam"))).toBe(false);
  });

  it("open to nobody else: not to the designer, not to another tester, not by a link's key or an old cookie", async () => {
    const { testerId } = await accepted();
    const { testerId: other } = await accepted();
    const own = browser.cookies.get(`sizewright-tester-${testerId}`) ?? "";
    browser.cookies.delete(`sizewright-tester-${testerId}`);
    await expect(testerAccess(testerId)).rejects.toMatchObject({ code: "not-found" });
    signIn(designer);
    await expect(testerAccess(testerId)).rejects.toMatchObject({ code: "not-found" });
    browser.cookies.set(`sizewright-tester-${testerId}`, linkKey("invitation", { id: testerId, version: 1 }));
    await expect(testerAccess(testerId)).rejects.toMatchObject({ code: "not-found" });
    browser.cookies.set(`sizewright-tester-${testerId}`, browser.cookies.get(`sizewright-tester-${other}`) ?? "");
    await expect(testerAccess(testerId)).rejects.toMatchObject({ code: "not-found" });
    browser.cookies.set(`sizewright-tester-${testerId}`, own);
    await expect(testerAccess(testerId)).resolves.toMatchObject({ testerId });
    await renewLink(access, testerId);
    await expect(testerAccess(testerId)).rejects.toMatchObject({ code: "not-found" });
  });

  it("get an account by a password, which voids link and cookie; one that exists is left as it is", async () => {
    const { testerId, own } = await accepted();
    const taken = await makeAccount({ name: "Other" });
    const password = "a long enough password";
    expect(await setTesterPassword(own, { name: "Bea", email: taken.email, password })).toBeNull();
    expect(await rowOf(testerId)).toMatchObject({ accountId: null, linkVersion: 1 });
    const email = `${randomUUID()}@example.org`;
    const account = await setTesterPassword(own, { name: "Bea", email, password });
    expect(await rowOf(testerId)).toMatchObject({ accountId: account?.accountId, linkVersion: 2 });
    await expect(testerAccess(testerId)).rejects.toMatchObject({ code: "not-found" });
    const again = setTesterPassword(own, { name: "Bea", email: `${randomUUID()}@example.org`, password });
    await expect(again).rejects.toMatchObject({ code: "not-found" });
  });
});

describe("how she gets on", () => {
  const tap = { word: "stuck", note: "which row?" } as const;

  it("is said by one tap, once, while the call is open and she has not stopped", async () => {
    const { testerId, own } = await accepted();
    const submissionKey = randomUUID();
    await Promise.all([sayMilestone(own, { ...tap, submissionKey }), sayMilestone(own, { ...tap, submissionKey })]);
    expect(await database().milestone.count({ where: { testerId } })).toBe(1);
    await closeCall(access);
    const late = sayMilestone(own, { ...tap, submissionKey: randomUUID() });
    await expect(late).rejects.toMatchObject({ code: "closed" });
    await expect(stopTest(own, { note: "", submissionKey: randomUUID() })).rejects.toMatchObject({ code: "closed" });
  });

  it("ends when she must stop, and goes on after all until her place is filled", async () => {
    const { testerId, own } = await accepted();
    await stopTest(own, { note: "", submissionKey: randomUUID() });
    await stopTest(own, { note: "", submissionKey: randomUUID() });
    expect(await database().milestone.count({ where: { testerId, word: "stop" } })).toBe(1);
    const said = sayMilestone(own, { ...tap, submissionKey: randomUUID() });
    await expect(said).rejects.toMatchObject({ code: "closed" });
    await goOnAfterAll(own, randomUUID());
    expect(await rowOf(testerId)).toMatchObject({ stoppedAt: null });
  });
});

describe("what is kept of her", () => {
  it("is deleted whole where she has sent nothing", async () => {
    const { testerId, own } = await accepted();
    await forgetTester(own);
    expect(await database().tester.count({ where: { id: testerId } })).toBe(0);
    await expect(forgetTester(own)).rejects.toMatchObject({ code: "not-found" });
  });

  it("leaves the numbers of her report alone where she has sent one, and nobody comes in", async () => {
    const { testerId, own } = await accepted();
    const { revisionId } = await rowOf(testerId);
    const { id: _id, ...report } = reader(
      "x",
      { bust: 101 },
      { fit: [{ area: "bust", scale: 1, says: "my own words" }] },
    );
    for (const version of [1, 2])
      await database().report.create({
        data: {
          ...{ testerId, version, revisionId: revisionId ?? "", submissionKey: randomUUID() },
          document: JSON.parse(JSON.stringify(report)) as object,
        },
      });
    await sayMilestone(own, { word: "behind", note: "my own words", submissionKey: randomUUID() });
    await noteTester(access, testerId, "likes to talk: Bea");
    await forgetTester(own);
    const { rows } = await pool().query(
      `SELECT row_to_json(t)::text || coalesce(row_to_json(r)::text, '') AS all FROM tester t LEFT JOIN report r ON r.tester_id = t.id WHERE t.id = $1`,
      [testerId],
    );
    expect(rows).toHaveLength(1);
    expect(JSON.stringify(rows)).not.toMatch(/Bea|bea@|my own words/);
    expect(JSON.stringify(rows)).toContain("101");
    expect(await database().milestone.count({ where: { testerId } })).toBe(0);
    await expect(testerAccess(testerId)).rejects.toMatchObject({ code: "not-found" });
    await expect(renewLink(access, testerId)).rejects.toMatchObject({ code: "not-found" });
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
    expect(await progressRows(elsewhere)).toEqual([]);
    expect(await progressRows(elsewhere, testerId)).toEqual([]);
    expect(await progressRows(looks)).toHaveLength(1);
    for (const theirs of [elsewhere, looks]) {
      await expect(noteTester(theirs, testerId, "x")).rejects.toMatchObject({ code: "not-found" });
      await expect(renewLink(theirs, testerId)).rejects.toMatchObject({ code: "not-found" });
      await expect(withdrawInvited(theirs, testerId)).rejects.toMatchObject({ code: "changed-meanwhile" });
    }
    await expect(closeCall(looks)).rejects.toMatchObject({ code: "changed-meanwhile" });
    await expect(inviteLonger(looks, testerId, new Date(Date.now() + WEEK))).rejects.toMatchObject({ code: "closed" });
    await expect(callAccess(sam, access.callId, "viewer")).rejects.toMatchObject({ code: "not-found" });
  });

  it("has the designer test a size herself, once", async () => {
    const testerId = await invite({ self: designer });
    expect(await rowOf(testerId)).toMatchObject({ accountId: designer.accountId });
    await expect(invite({ self: designer })).rejects.toMatchObject({ code: "not-allowed" });
  });

  it("closes the call either before or after what is being sent: it is in, or told", async () => {
    const { id: revisionId } = await database().revision.findFirstOrThrow({
      where: { patternId: access.pattern.patternId },
    });
    const revision = { revisionId, document: patternDocument() };
    const send = (id: string) =>
      addReports(access, {
        revision,
        reports: [{ tester: reader(id, { bust: 100 }), typed: {}, submissionKey: randomUUID() }],
      });
    const outcomes = await Promise.allSettled([send("one"), closeCall(access), send("two")]);
    const sent = [outcomes[0], outcomes[2]].filter((outcome) => outcome?.status === "fulfilled").length;
    expect(await database().report.count({ where: { tester: { callId: access.callId } } })).toBe(sent);
    await expect(send("three")).rejects.toMatchObject({ code: "closed" });
    await expect(invite()).rejects.toMatchObject({ code: "closed" });
  });
});
