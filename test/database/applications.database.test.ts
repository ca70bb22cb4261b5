import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import { applicationAccess, applicationLink, ownApplicationLink } from "@/features/recruiting/applications/access";
import { callApplications } from "@/features/recruiting/applications/data";
import { storeDecision, storeApplication, type NewApplication } from "@/features/recruiting/applications/mutations";
import { readOwnApplication } from "../../src/features/recruiting/applications/own/own-data";
import {
  deleteApplication,
  takeUpAgain,
  withdrawApplication,
} from "../../src/features/recruiting/applications/own/own-mutations";
import { callAccess } from "@/features/calls/access";
import { publishedCall, type PublishedCall } from "@/features/recruiting/listing/access";
import { inviteApplicants } from "@/features/recruiting/invitations/mutations";
import { database } from "@/server/database";
import { listingDocument } from "../factories/listing";
import { makeViewer } from "./make-account";
import { joinCall, makePublishedCall, type PublishedCallMade } from "./published-call";

let made: PublishedCallMade;
let call: PublishedCall;

const LATER = new Date("2091-01-01T00:00:00Z");

function application(change: Partial<NewApplication> = {}): NewApplication {
  return {
    name: "Maja",
    email: `${randomUUID()}@example.org`,
    document: {
      ...{ accepts: null, prefers: [], forAnother: false, yarn: "", tool: "", unit: "cm", terms: "us" },
      ...{ timeZone: "Pacific/Chatham", experience: "first", handle: "", pastWork: "" },
    },
    measurements: { bust: 97.79 },
    typed: { bust: "38 1/2 in" },
    accountId: null,
    agreementVersion: 1,
    idempotencyKey: randomUUID(),
    ...change,
  };
}

async function applied(change: Partial<NewApplication> = {}) {
  const applicationId = await storeApplication(call, application(change));
  return { applicationId, access: await applicationAccess(applicationLink(applicationId)) };
}

async function changeListing(change: Parameters<typeof listingDocument>[0]): Promise<void> {
  await database().listing.update({ where: { callId: made.callId }, data: { document: listingDocument(change) } });
}

beforeEach(async () => {
  made = await makePublishedCall();
  call = await publishedCall(made.callId);
});

describe("an application", () => {
  it("is stored as typed and in centimetres, with the agreement's version and the time of consent", async () => {
    const { access } = await applied();
    const own = await readOwnApplication(access);
    expect(own).toMatchObject({
      ...{ name: "Maja", measurements: { bust: 97.79 }, typed: { bust: "38 1/2 in" }, designer: "Ana" },
      ...{ agreement: { version: 1, text: "You test and you tell." }, withdrawnAt: null, tester: null },
    });
    expect(Math.abs(own.agreedAt.getTime() - Date.now())).toBeLessThan(60_000);
  });

  it("is stored once however often the same sending comes, also at once and after the call is closed", async () => {
    const same = application();
    const ids = await Promise.all([1, 2, 3].map(() => storeApplication(call, same)));
    await database().call.update({ where: { id: made.callId }, data: { status: "closed" } });
    ids.push(await storeApplication(call, same));
    expect(new Set(ids).size).toBe(1);
    expect(await database().application.count({ where: { callId: made.callId } })).toBe(1);
  });

  it("is one an e-mail address and call, and one an account and call, also at once", async () => {
    const viewer = await makeViewer("Maja");
    const twice = await Promise.allSettled([
      storeApplication(call, application({ email: "maja@example.org" })),
      storeApplication(call, application({ email: "maja@example.org", name: "Somebody else" })),
    ]);
    expect(twice.map(({ status }) => status).sort()).toEqual(["fulfilled", "rejected"]);
    expect(twice.find(({ status }) => status === "rejected")).toMatchObject({ reason: { refusal: "known" } });
    await applied({ accountId: viewer.accountId });
    await expect(applied({ accountId: viewer.accountId })).rejects.toMatchObject({ refusal: "known" });
    expect(await database().application.count({ where: { callId: made.callId } })).toBe(2);
    const other = await publishedCall((await makePublishedCall()).callId);
    await expect(storeApplication(other, application({ email: "maja@example.org" }))).resolves.toBeDefined();
  });

  it("for the last place is taken from one of two that come at once", async () => {
    await changeListing({ mostApplications: 2 });
    await applied();
    const both = await Promise.allSettled([applied(), applied()]);
    expect(both.map(({ status }) => status).sort()).toEqual(["fulfilled", "rejected"]);
    expect(both.find(({ status }) => status === "rejected")).toMatchObject({ reason: { refusal: "full" } });
    const positions = (await callApplications(made.access)).map(({ position }) => position);
    expect(positions).toEqual([0, 1]);
  });

  it("is refused once the time is over, the call closed or taken back, or the agreement another", async () => {
    const where = { callId: made.callId };
    await database().agreement.create({ data: { ...where, version: 2, text: "Another text." } });
    await expect(applied()).rejects.toMatchObject({ refusal: "agreement" });
    await database().listing.update({ where, data: { applyUntil: new Date(Date.now() - 1) } });
    await expect(applied({ agreementVersion: 2 })).rejects.toMatchObject({ refusal: "over" });
    await database().listing.update({ where, data: { applyUntil: LATER } });
    await database().call.update({ where: { id: made.callId }, data: { status: "closed" } });
    await expect(applied({ agreementVersion: 2 })).rejects.toMatchObject({ refusal: "over" });
    await database().call.update({ where: { id: made.callId }, data: { status: "open" } });
    await database().listing.update({ where, data: { publishedAt: null } });
    await expect(applied({ agreementVersion: 2 })).rejects.toMatchObject({ refusal: "over" });
    expect(await database().application.count({ where })).toBe(0);
  });

  it("is kept whole with a name of 300 characters, right-to-left text and emoji", async () => {
    for (const name of ["ن".repeat(300), "🧶🐑", "‮abc"]) {
      const { access } = await applied({ name });
      expect((await readOwnApplication(access)).name).toBe(name);
    }
  });
});

describe("an applicant's link", () => {
  it("opens only its own application: no other id with its key, no part of it, no key of another kind", async () => {
    const [maja, rosa] = [await applied(), await applied()];
    const link = applicationLink(maja.applicationId);
    const [id = "", key = ""] = link.split(".");
    const guesses = [`${rosa.applicationId}.${key}`, id, `${id}.`, `${id}.${key.slice(1)}`, `${link}x`, `.${key}`, "x"];
    for (const guess of guesses) await expect(applicationAccess(guess)).rejects.toMatchObject({ code: "not-found" });
    await expect(applicationAccess(link)).resolves.toMatchObject({ applicationId: maja.applicationId });
  });

  it("is found again by the account that applied, and by no other", async () => {
    const [viewer, stranger] = [await makeViewer("Maja"), await makeViewer("Sam")];
    const { applicationId } = await applied({ accountId: viewer.accountId });
    expect(await ownApplicationLink(viewer, made.callId)).toBe(applicationLink(applicationId));
    expect(await ownApplicationLink(stranger, made.callId)).toBeNull();
  });
});

describe("taking it back", () => {
  it("hides the body from the designer, opens the spot, and can be undone while applications are open", async () => {
    await changeListing({ mostApplications: 1 });
    const { access } = await applied();
    await withdrawApplication(access);
    await expect(withdrawApplication(access)).rejects.toMatchObject({ code: "changed-meanwhile" });
    expect(await callApplications(made.access)).toMatchObject([{ name: "Maja", measurements: null, typed: {} }]);
    const rosa = await applied({ name: "Rosa" });
    await expect(takeUpAgain(access)).rejects.toMatchObject({ refusal: "full" });
    await withdrawApplication(rosa.access);
    await takeUpAgain(access);
    expect((await callApplications(made.access))[0]).toMatchObject({
      measurements: { bust: 97.79 },
      withdrawnAt: null,
    });
    await withdrawApplication(access);
    await database().listing.update({ where: { callId: made.callId }, data: { publishedAt: null } });
    await expect(takeUpAgain(access)).rejects.toMatchObject({ refusal: "over" });
  });

  it("declines an offered spot, and is not possible once a test is accepted", async () => {
    const { access, applicationId } = await applied();
    const rosa = await applied();
    const invitations = [applicationId, rosa.applicationId].map((id) => ({ applicationId: id, size: "small" }));
    await inviteApplicants(made.access, { invitations, expiresAt: LATER });
    await withdrawApplication(access);
    expect(await readOwnApplication(access)).toMatchObject({ tester: { size: "small", state: "declined" } });
    await expect(takeUpAgain(access)).rejects.toMatchObject({ code: "changed-meanwhile" });
    await database().tester.update({
      where: { applicationId: rosa.applicationId },
      data: { acceptedAt: new Date() },
    });
    await expect(withdrawApplication(rosa.access)).rejects.toMatchObject({ code: "changed-meanwhile" });
    expect(await readOwnApplication(rosa.access)).toMatchObject({ withdrawnAt: null, tester: { state: "accepted" } });
  });

  it("and being invited at the same moment leave no unseen invitation", async () => {
    const { access, applicationId } = await applied();
    const invitations = [{ applicationId, size: "small" }];
    await Promise.allSettled([
      withdrawApplication(access),
      inviteApplicants(made.access, { invitations, expiresAt: LATER }),
    ]);
    const tester = await database().tester.findUnique({ where: { applicationId } });
    expect(tester === null || tester.declinedAt !== null).toBe(true);
  });
});

describe("deleting it", () => {
  it("leaves nothing of contact, body and answers, and allows another application", async () => {
    const { access, applicationId } = await applied({ email: "maja@example.org" });
    await deleteApplication(access);
    const where = { applicationId };
    expect(await database().applicationContact.count({ where })).toBe(0);
    expect(await database().applicationBody.count({ where })).toBe(0);
    await expect(applicationAccess(applicationLink(applicationId))).rejects.toMatchObject({ code: "not-found" });
    await expect(readOwnApplication(access)).rejects.toMatchObject({ code: "not-found" });
    await expect(applied({ email: "maja@example.org" })).resolves.toBeDefined();
  });

  it("also deletes a spot that was never accepted, but no accepted test", async () => {
    const [maja, rosa] = [await applied(), await applied()];
    const invitations = [maja, rosa].map(({ applicationId }) => ({ applicationId, size: "small" }));
    await inviteApplicants(made.access, { invitations, expiresAt: LATER });
    await database().tester.update({ where: { applicationId: rosa.applicationId }, data: { acceptedAt: new Date() } });
    await deleteApplication(maja.access);
    await deleteApplication(rosa.access);
    const testers = await database().tester.findMany({ where: { callId: made.callId }, include: { body: true } });
    expect(testers).toMatchObject([{ applicationId: null, body: { measurements: { bust: 97.79 } } }]);
  });
});

describe("the designer's decision", () => {
  it("is made by the designer and by editors; viewers read it, strangers do neither", async () => {
    const { applicationId } = await applied();
    const [editor, viewer] = [await joinCall(made, "editor"), await joinCall(made, "viewer")];
    await storeDecision(made.access, { applicationId, decision: "yes" });
    await storeDecision(editor.access, { applicationId, decision: "maybe" });
    await expect(storeDecision(viewer.access, { applicationId, decision: "no" })).rejects.toMatchObject({
      code: "not-found",
    });
    expect(await callApplications(viewer.access)).toMatchObject([{ decision: "maybe", measurements: { bust: 97.79 } }]);
    const other = await makePublishedCall();
    await expect(storeDecision(other.access, { applicationId, decision: "no" })).rejects.toMatchObject({
      code: "not-found",
    });
    await expect(callAccess(other.owner, made.callId, "viewer")).rejects.toMatchObject({ code: "not-found" });
    expect(await callApplications(other.access)).toEqual([]);
    await storeDecision(made.access, { applicationId, decision: null });
    expect(await callApplications(made.access)).toMatchObject([{ decision: null }]);
  });

  it("comes too late for one that is withdrawn, and once the call is closed", async () => {
    const { applicationId, access } = await applied();
    await withdrawApplication(access);
    await expect(storeDecision(made.access, { applicationId, decision: "yes" })).rejects.toMatchObject({
      code: "changed-meanwhile",
    });
    await takeUpAgain(access);
    await database().call.update({ where: { id: made.callId }, data: { status: "closed" } });
    await expect(storeDecision(made.access, { applicationId, decision: "yes" })).rejects.toMatchObject({
      code: "changed-meanwhile",
    });
  });
});
