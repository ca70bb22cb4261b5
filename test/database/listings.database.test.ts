import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import { callAccess, type CallAccess } from "../../src/features/calls/access";
import { publishedCall } from "../../src/features/recruiting/listing/access";
import { readListing, readPublished } from "../../src/features/recruiting/listing/data";
import { agreements, editedListing, previewedCall } from "../../src/features/recruiting/listing/edited-data";
import * as mutations from "../../src/features/recruiting/listing/mutations";
import type { TypedListing } from "../../src/features/recruiting/listing/schema";
import { patternAccess, type PatternAccess } from "../../src/features/patterns/access";
import { createPattern } from "../../src/features/patterns/mutations";
import { database } from "../../src/server/database";
import { daysAfter } from "../../src/server/time-zone";
import type { Viewer } from "../../src/server/viewer";
import { patternDocument } from "../factories/pattern";
import { makeViewer } from "./make-account";
import { today, typed, whole } from "./typed-listing";

const { createListing, publishListing, saveTypedListing, startCall, unpublishListing } = mutations;
const pattern = patternDocument();

let owner: Viewer;
let ownPattern: PatternAccess;
let callId: string;
let access: CallAccess;

beforeEach(async () => {
  owner = await makeViewer("Invented Designer");
  const { patternId } = await createPattern(owner, { document: pattern, reason: "First" });
  ownPattern = await patternAccess(owner, patternId, "owner");
  ({ callId } = await startCall(ownPattern, { title: "Vest test", typed: typed(), idempotencyKey: randomUUID() }));
  access = await callAccess(owner, callId, "owner");
});

async function publish(version: number, change: TypedListing = {}) {
  return await publishListing(access, { version, listing: whole(change) });
}

async function apply(agreementVersion: number, { name = "Ana", position = 0, withdrawnAt = null as Date | null } = {}) {
  const { id } = await database().application.create({
    data: {
      ...{ callId, position, agreementVersion, withdrawnAt, document: {}, agreedAt: new Date() },
      idempotencyKey: randomUUID(),
      contact: { create: { callId, name, email: `${randomUUID()}@example.org` } },
    },
  });
  return id;
}

describe("a call with a listing", () => {
  it("is made once of a form that is sent twice, also at the same moment", async () => {
    const sent = { title: "Once", typed: typed(), idempotencyKey: randomUUID() };
    const made = await Promise.all([1, 2, 3].map(() => startCall(ownPattern, sent)));
    expect(new Set(made.map(({ callId: id }) => id)).size).toBe(1);
    expect(await database().call.count({ where: { title: "Once", patternId: ownPattern.patternId } })).toBe(1);
  });

  it("is nobody’s for knowing the key it was made with", async () => {
    const idempotencyKey = randomUUID();
    await startCall(ownPattern, { title: "Mine", typed: typed(), idempotencyKey });
    const stranger = await makeViewer();
    const { patternId } = await createPattern(stranger, { document: pattern, reason: "First" });
    const other = await patternAccess(stranger, patternId, "owner");
    await expect(startCall(other, { title: "Theirs", typed: typed(), idempotencyKey })).rejects.toMatchObject({
      code: "not-found",
    });
  });

  it("is nothing to strangers before it is published, and to everybody after", async () => {
    const stranger = await makeViewer();
    await expect(publishedCall(callId)).rejects.toMatchObject({ code: "not-found" });
    await expect(publishedCall("no-id")).rejects.toMatchObject({ code: "not-found" });
    await expect(callAccess(stranger, callId, "viewer")).rejects.toMatchObject({ code: "not-found" });
    expect(await previewedCall(access)).toMatchObject({ title: "Vest test", designer: "Invented Designer" });
    expect(await readListing(access)).toBeNull();
    expect(await publish(1)).toEqual({ status: "saved", version: 2 });
    await expect(callAccess(stranger, callId, "viewer")).rejects.toMatchObject({ code: "not-found" });
    await expect(previewedCall(access)).rejects.toMatchObject({ code: "not-found" });
    expect(await readPublished(await publishedCall(callId))).toMatchObject({
      ...{ title: "Vest test", designer: "Invented Designer", taking: "open", agreement: { version: 1 } },
      places: { small: { least: 1, wanted: 2, most: 3 }, large: { least: 0, wanted: 3, most: 3 } },
      document: { bodyAsked: ["bust"], fitBy: ["bust"], mostApplications: null },
    });
  });

  it("may be changed by no helper who may only look", async () => {
    const helper = await makeViewer();
    const { patternId } = ownPattern;
    await database().membership.create({ data: { patternId, accountId: helper.accountId, role: "viewer" } });
    const looking = await callAccess(helper, callId, "viewer");
    expect(await editedListing(looking)).toMatchObject({ version: 1, publishedAt: null });
    const closed = { code: "closed" };
    await expect(saveTypedListing(looking, { version: 1, typed: {}, title: null })).rejects.toMatchObject(closed);
    await expect(publishListing(looking, { version: 1, listing: whole() })).rejects.toMatchObject(closed);
    await expect(unpublishListing(looking, { version: 1, typed: {} })).rejects.toMatchObject(closed);
    await expect(createListing(looking, {})).rejects.toMatchObject(closed);
    expect(await editedListing(access)).toMatchObject({ version: 1, typed: typed() });
  });
});

describe("a draft", () => {
  it("keeps whatever was typed, faulty or not, and the title where there is one", async () => {
    const odd = { title: "New title", "wanted.small": "two", applyUntil: "soon", agreement: "👩🏽‍🦱 שלום" };
    const saved = await saveTypedListing(access, { version: 1, typed: odd, title: "New title" });
    expect(saved).toEqual({ status: "saved", version: 2 });
    expect(await editedListing(access)).toEqual({ version: 2, publishedAt: null, typed: odd });
    expect(await previewedCall(access)).toMatchObject({ title: "New title" });
    await saveTypedListing(access, { version: 2, typed: { ...odd, title: "" }, title: null });
    expect(await previewedCall(access)).toMatchObject({ title: "New title" });
  });

  it("keeps the first of two saves of one version, and reports a conflict to the second", async () => {
    const saves = ["mine", "yours"].map((introduction) => ({
      version: 1,
      typed: typed({ introduction }),
      title: null,
    }));
    const answers = await Promise.all(saves.map((save) => saveTypedListing(access, save)));
    expect(answers.map(({ status }) => status).toSorted()).toEqual(["conflict", "saved"]);
    const first = saves[answers.findIndex(({ status }) => status === "saved")];
    expect((await editedListing(access))?.typed).toEqual(first?.typed);
  });

  it("that is saved again as it published is saved: its answer was lost", async () => {
    const save = { version: 1, typed: typed({ introduction: "Once" }), title: null };
    await saveTypedListing(access, save);
    expect(await saveTypedListing(access, save)).toEqual({ status: "saved", version: 2 });
  });

  it("is a conflict once somebody has published", async () => {
    await publish(1);
    expect(await saveTypedListing(access, { version: 1, typed: typed({ gives: "x" }), title: null })).toEqual({
      status: "conflict",
    });
    expect((await editedListing(access))?.typed["gives"]).toBe("The pattern.");
  });
});

describe("what is published", () => {
  it("is published once however often it is sent, and changed by a later version", async () => {
    expect(await Promise.all([publish(1), publish(1)])).toEqual([
      { status: "saved", version: 2 },
      { status: "saved", version: 2 },
    ]);
    const since = (await editedListing(access))?.publishedAt;
    expect(await publish(1, { gives: "More." })).toEqual({ status: "conflict" });
    expect(await publish(2, { gives: "More.", "wanted.large": "9", "most.large": "9" })).toEqual({
      status: "saved",
      version: 3,
    });
    expect((await editedListing(access))?.publishedAt).toEqual(since);
    expect(await readPublished(await publishedCall(callId))).toMatchObject({
      document: { gives: "More." },
      places: { large: { wanted: 9 } },
    });
    expect(await agreements(access)).toHaveLength(1);
  });

  it("keeps every text of its agreement with those it binds", async () => {
    await publish(1);
    await apply(1, { name: "Ana" });
    await apply(1, { name: "Bea", position: 1, withdrawnAt: new Date() });
    await publish(2, { agreement: "I will report in time." });
    await apply(2, { name: "Cleo", position: 2 });
    expect(await agreements(access)).toMatchObject([
      { version: 2, text: "I will report in time.", binds: ["Cleo"] },
      { version: 1, text: "I will report.", binds: ["Ana"] },
    ]);
    await expect(
      database().agreement.update({ where: { callId_version: { callId, version: 1 } }, data: { text: "Other." } }),
    ).rejects.toThrow();
    expect((await readListing(access))?.agreement).toEqual({ version: 2, text: "I will report in time." });
  });

  it("adds to its agreement what may be shown and from when; another choice is another version", async () => {
    await publish(1, { progressPhotos: "never", finishedPhotos: "release", releaseOn: "2090-07-01" });
    const read = await readListing(access);
    expect(read?.agreement.text).toBe(
      "I will report.\n\nI will not show photos of my work in progress to others. I will show photos of the finished garment only once the pattern is released. I will never show the pattern’s text, charts or numbers.",
    );
    expect(read).toMatchObject({ sharing: { progressPhotos: "never", finishedPhotos: "release" } });
    const edited = (await editedListing(access))?.typed;
    expect(edited).toMatchObject({ agreement: "I will report.", finishedPhotos: "release", releaseOn: "2090-07-01" });
    await publish(2, { ...edited, releaseOn: "" });
    expect(await agreements(access)).toHaveLength(1);
    await publish(3, { ...edited, finishedPhotos: "any" });
    expect((await agreements(access)).map(({ version }) => version)).toEqual([2, 1]);
    expect((await readListing(access))?.agreement.text).toContain(
      "I may show photos of the finished garment at any time.",
    );
  });

  it("lets a size have no fewer at most than it has testers", async () => {
    await publish(1);
    for (const position of [0, 1])
      await database().tester.create({ data: { callId, code: `tester-${position}`, position, size: "large" } });
    expect(await publish(2, { "wanted.large": "1", "most.large": "1" })).toMatchObject({
      status: "refused",
      faults: [{ field: "most.large", message: "This size already has 2 testers. Enter 2 or more." }],
    });
    expect((await readPublished(await publishedCall(callId))).places).toMatchObject({ large: { wanted: 3 } });
    expect(await publish(2, { "wanted.large": "1", "most.large": "2" })).toMatchObject({ status: "saved" });
  });

  it("is unpublished while nobody has applied, with all its texts, and not after", async () => {
    await publish(1);
    expect(await unpublishListing(access, { version: 1, typed: typed() })).toEqual({ status: "conflict" });
    expect(await unpublishListing(access, { version: 2, typed: typed() })).toEqual({ status: "saved", version: 3 });
    await expect(publishedCall(callId)).rejects.toMatchObject({ code: "not-found" });
    expect(await editedListing(access)).toEqual({ version: 3, publishedAt: null, typed: typed() });
    await publish(3);
    expect(await agreements(access)).toHaveLength(1);
    await apply(1);
    expect(await unpublishListing(access, { version: 4, typed: typed() })).toEqual({ status: "applied" });
    expect(await readListing(access)).not.toBeNull();
  });

  it("is not changed once the call is closed, and says so to readers", async () => {
    await publish(1);
    await database().call.update({ where: { id: callId }, data: { status: "closed", closedAt: new Date() } });
    await expect(publish(2, { gives: "More." })).rejects.toMatchObject({ code: "closed" });
    await expect(unpublishListing(access, { version: 2, typed: {} })).rejects.toMatchObject({ code: "closed" });
    expect(await readPublished(await publishedCall(callId))).toMatchObject({ taking: "closed" });
  });

  it("takes as many applications as it says, and none after its last day", async () => {
    await publish(1, { mostApplications: "2" });
    await apply(1);
    await apply(1, { position: 1, withdrawnAt: new Date() });
    const taking = async () => (await readPublished(await publishedCall(callId))).taking;
    expect(await taking()).toBe("open");
    await apply(1, { position: 2 });
    expect(await taking()).toBe("full");
    await publish(2, { mostApplications: "3" });
    const { document } = whole();
    const dates = { ...document.dates, applyUntil: daysAfter(today, -1) };
    await database().listing.update({ where: { callId }, data: { document: { ...document, dates } } });
    expect(await taking()).toBe("over");
  });
});

it("begins one listing, and one only, for a call that was brought in without", async () => {
  const { id } = await database().call.create({ data: { patternId: ownPattern.patternId, title: "Brought in" } });
  const brought = await callAccess(owner, id, "editor");
  expect(await editedListing(brought)).toBeNull();
  await Promise.all([createListing(brought, typed()), createListing(brought, typed())]);
  await createListing(brought, typed({ gives: "Another" }));
  expect(await editedListing(brought)).toEqual({ version: 1, publishedAt: null, typed: typed() });
});
