import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { readInvited } from "@/features/testing/invited/invited-data";
import { invitedState } from "@/features/testing/invited/invited-state";
import type { TesterAccess } from "@/features/testing/home/access";
import { testerAccess } from "@/features/testing/home/request-access";
import { forgetTester } from "@/features/testing/home/forget-mutations";
import { acceptInvited, bindOwnTest, bindToAccount } from "../../src/features/testing/invited/invited-mutations";
import { goOnAfterAll, storeMilestone, stopTest } from "@/features/testing/home/milestone-mutations";
import {
  closeCall,
  noteTester,
  openByLinkAgain,
  renewLink,
} from "../../src/features/testing/progress/progress-mutations";
import { database, pool } from "@/server/database";
import { linkKey } from "@/server/link-key";
import type { Viewer } from "@/server/viewer";
import { reader } from "../factories/call";
import { makeViewer } from "./make-account";
import { CHOICES, held, inviteTo, makeCall, rowOf } from "./invited-tester";

// Who asks is what a request's cookies say; there is no request here.
interface Asking {
  readonly cookies: Map<string, string>;
  viewer: { accountId: string; sessionVersion: number } | null;
}
const browser = vi.hoisted((): Asking => ({ cookies: new Map(), viewer: null }));
vi.mock("next/headers", () => ({
  cookies: () => Promise.resolve({ get: (name: string) => ({ value: browser.cookies.get(name) }) }),
  headers: () => Promise.resolve(new Headers()),
}));
vi.mock("next/server", () => ({ connection: () => Promise.resolve() }));
vi.mock("next-auth", () => ({
  getServerSession: () => Promise.resolve(browser.viewer === null ? null : { user: browser.viewer }),
}));

let designer: Viewer;
let access: CallAccess;

/** A tester who has accepted and has access by link. */
async function accepted(): Promise<{ testerId: string; own: TesterAccess }> {
  const testerId = await inviteTo(access);
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

beforeEach(async () => {
  browser.cookies.clear();
  signIn(null);
  designer = await makeViewer("Ana");
  access = await makeCall(designer);
});

describe("a tester's own pages", () => {
  it("open to the browser's cookie until the tester has an account, then only by signing in", async () => {
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

  it("get an account by a password, which the link then asks for; one that exists is left as it is", async () => {
    const { testerId, own } = await accepted();
    const bea = await makeViewer("Bea");
    expect(await bindOwnTest(own, bea)).toBe(true);
    expect(await rowOf(testerId)).toMatchObject({ accountId: bea.accountId, linkVersion: 1 });
    expect(invitedState(await readInvited(await held(testerId)), { accountId: null, isLetIn: true }, new Date())).toBe(
      "sign-in",
    );
    await expect(testerAccess(testerId)).rejects.toMatchObject({ code: "not-found" });
    expect(await bindOwnTest(own, await makeViewer("Cleo"))).toBe(false);
  });
});

describe("a tester who can no longer sign in", () => {
  it("gets a new link from the designer, and their account keeps nothing of the test", async () => {
    const { testerId } = await accepted();
    const bea = await makeViewer("Bea");
    await bindToAccount(await held(testerId), bea);
    await openByLinkAgain(access, testerId);
    signIn(bea);
    await expect(testerAccess(testerId)).rejects.toMatchObject({ code: "not-found" });
    signIn(null);
    letIn(testerId, 2);
    await expect(testerAccess(testerId)).resolves.toMatchObject({ accountId: null });
    expect(await bindToAccount(await held(testerId), bea)).toBe(true);
  });

  it("gets none where the test has no account, nor from another designer or a helper who only looks", async () => {
    const { testerId } = await accepted();
    await expect(openByLinkAgain(access, testerId)).rejects.toMatchObject({ code: "not-found" });
    await bindToAccount(await held(testerId), await makeViewer("Bea"));
    const others = await makeCall(await makeViewer("Cleo"));
    await expect(openByLinkAgain(others, testerId)).rejects.toMatchObject({ code: "not-found" });
    const vera = await makeViewer("Vera");
    const helps = { patternId: access.pattern.patternId, accountId: vera.accountId, role: "viewer" } as const;
    await database().membership.create({ data: helps });
    const looks = await callAccess(vera, access.callId, "viewer");
    await expect(openByLinkAgain(looks, testerId)).rejects.toMatchObject({ code: "not-found" });
    expect(await rowOf(testerId)).toMatchObject({ linkVersion: 1 });
  });
});

describe("progress updates", () => {
  const tap = { status: "stuck", note: "which row?" } as const;

  it("are sent by one tap, once, while the call is open and the tester has not stopped", async () => {
    const { testerId, own } = await accepted();
    const idempotencyKey = randomUUID();
    await Promise.all([
      storeMilestone(own, { ...tap, idempotencyKey }),
      storeMilestone(own, { ...tap, idempotencyKey }),
    ]);
    expect(await database().milestone.count({ where: { testerId } })).toBe(1);
    await closeCall(access);
    const late = storeMilestone(own, { ...tap, idempotencyKey: randomUUID() });
    await expect(late).rejects.toMatchObject({ code: "closed" });
    await expect(stopTest(own, { note: "", idempotencyKey: randomUUID() })).rejects.toMatchObject({ code: "closed" });
  });

  it("end when the tester stops, who can continue until the spot is filled", async () => {
    const { testerId, own } = await accepted();
    await stopTest(own, { note: "", idempotencyKey: randomUUID() });
    await stopTest(own, { note: "", idempotencyKey: randomUUID() });
    expect(await database().milestone.count({ where: { testerId, status: "stop" } })).toBe(1);
    const said = storeMilestone(own, { ...tap, idempotencyKey: randomUUID() });
    await expect(said).rejects.toMatchObject({ code: "closed" });
    await goOnAfterAll(own, randomUUID());
    expect(await rowOf(testerId)).toMatchObject({ stoppedAt: null });
  });
});

describe("stored data", () => {
  it("is deleted completely if nothing was sent", async () => {
    const { testerId, own } = await accepted();
    await forgetTester(own);
    expect(await database().tester.count({ where: { id: testerId } })).toBe(0);
    await expect(forgetTester(own)).rejects.toMatchObject({ code: "not-found" });
  });

  it("is reduced to the numbers of a report that was sent, and nobody has access any more", async () => {
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
          ...{ testerId, version, revisionId: revisionId ?? "", idempotencyKey: randomUUID() },
          document: report,
        },
      });
    await storeMilestone(own, { status: "behind", note: "my own words", idempotencyKey: randomUUID() });
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
