import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import { callAccess } from "@/features/calls/access";
import type { TesterAccess } from "@/features/testing/home/access";
import { database } from "@/server/database";
import { fillFreePlace, givePlaces } from "../../src/features/recruiting/places/mutations";
import { placingBoard } from "../../src/features/recruiting/places/placing-board";
import { placingRows } from "../../src/features/recruiting/places/data";
import { goOnAfterAll } from "../../src/features/testing/home/milestone-mutations";
import { readTester } from "../../src/features/testing/home/data";
import { nextThing } from "../../src/features/testing/home/next-thing";
import { freeSpots, returnSpot } from "../../src/features/testing/progress/spot-mutations";
import { makeViewer } from "./make-account";
import { makeCall, WEEK } from "./invited-tester";
import { apply, placesCall, send, type PlacesCall } from "./places-call";

const NOW = new Date();
const DATES = { startOn: "2090-01-02", swatchBy: "2090-02-01", reportBy: "2090-04-01" };

let call: PlacesCall;
let ann: string;
let bea: string;

/** Ann makes the one S and has typed a swatch; Bea waits. */
beforeEach(async () => {
  call = await placesCall({ small: 1 });
  await apply(call, "Ann", { bust: 90 });
  bea = await apply(call, "Bea", { bust: 91 });
  await givePlaces(call.access, { considering: "yes", now: NOW });
  await send(call);
  const tester = await database().tester.findFirstOrThrow({ where: { callId: call.callId } });
  ann = tester.id;
  await database().tester.update({ where: { id: ann }, data: { acceptedAt: NOW } });
  await database().reportDraft.create({ data: { testerId: ann, typed: { "swatch.0.stitches": "23" } } });
});

const rowOf = (id: string) => database().tester.findUniqueOrThrow({ where: { id } });
const own = () => ({ testerId: ann, callId: call.callId, accountId: null, linkVersion: 1 }) as TesterAccess;
const openSpots = async () => placingBoard(await placingRows(call.access), NOW).board.yes.free;
const fill = () =>
  fillFreePlace(call.access, {
    ...{ applicationId: bea, size: "small", dates: DATES, now: NOW },
    expiresAt: new Date(Date.now() + WEEK),
  });

describe("the spot of a tester who gave no sign", () => {
  it("is open for an applicant, while what the tester typed stays", async () => {
    expect(await openSpots()).toEqual([]);
    expect(await freeSpots(call.access, [ann])).toBe(1);
    expect(await openSpots()).toMatchObject([{ size: "small", free: 1, successors: [{ application: bea }] }]);
    expect(await database().reportDraft.count({ where: { testerId: ann } })).toBe(1);
    await fill();
    expect(await openSpots()).toEqual([]);
  });

  it("tells the tester kindly when they come back, and lets them go on until somebody has it", async () => {
    await freeSpots(call.access, [ann]);
    const tester = { ...(await readTester(own())), draft: null };
    const { title, message } = nextThing({ tester, steps: [], inHand: { sent: null } } as never);
    expect(`${title}. ${message}`).toMatch(/^Your spot is open for somebody else.*stays with the designer and counts/);
    await goOnAfterAll(own(), randomUUID());
    expect(await rowOf(ann)).toMatchObject({ stoppedAt: null, freedAt: null });
  });

  it("is given back while it is open, and no longer once it is filled", async () => {
    await freeSpots(call.access, [ann]);
    await returnSpot(call.access, ann);
    expect(await rowOf(ann)).toMatchObject({ stoppedAt: null, freedAt: null });
    await expect(returnSpot(call.access, ann)).rejects.toMatchObject({ code: "changed-meanwhile" });
    await freeSpots(call.access, [ann]);
    await fill();
    await expect(returnSpot(call.access, ann)).rejects.toMatchObject({ code: "no-place" });
    expect((await rowOf(ann)).freedAt).not.toBeNull();
  });

  it("goes to the designer or to an applicant where both act at once", async () => {
    await freeSpots(call.access, [ann]);
    const done = await Promise.allSettled([fill(), returnSpot(call.access, ann)]);
    expect(done.map(({ status }) => status).toSorted()).toEqual(["fulfilled", "rejected"]);
  });
});

describe("a spot is not opened", () => {
  const NOBODY = { code: "changed-meanwhile" };

  it("of a tester who has not accepted, has stopped, or has sent everything", async () => {
    await database().tester.update({ where: { id: ann }, data: { acceptedAt: null } });
    await expect(freeSpots(call.access, [ann])).rejects.toMatchObject(NOBODY);
    await database().tester.update({ where: { id: ann }, data: { acceptedAt: NOW, stoppedAt: NOW } });
    await expect(freeSpots(call.access, [ann])).rejects.toMatchObject(NOBODY);
    expect(await rowOf(ann)).toMatchObject({ freedAt: null });
    await expect(returnSpot(call.access, ann)).rejects.toMatchObject(NOBODY);
    await database().tester.update({ where: { id: ann }, data: { stoppedAt: null } });
    // The pattern has no measurements, so that any report is whole.
    const { revisionId } = await rowOf(ann);
    const report = { testerId: ann, revisionId: revisionId ?? "", version: 1, idempotencyKey: randomUUID() };
    await database().report.create({ data: { ...report, document: { readings: [] } } });
    await expect(freeSpots(call.access, [ann])).rejects.toMatchObject(NOBODY);
  });

  it("of another call's tester, whoever's ids are sent along", async () => {
    const others = await makeCall(await makeViewer("Cleo"));
    await expect(freeSpots(others, [ann])).rejects.toMatchObject(NOBODY);
    await freeSpots(call.access, [ann]);
    await expect(returnSpot(others, ann)).rejects.toMatchObject(NOBODY);
    expect((await rowOf(ann)).freedAt).not.toBeNull();
  });

  it("by a helper who only looks, nor in a closed call", async () => {
    const vera = await makeViewer("Vera");
    const { patternId } = call.access.pattern;
    await database().membership.create({ data: { patternId, accountId: vera.accountId, role: "viewer" } });
    const looks = await callAccess(vera, call.callId, "viewer");
    await expect(freeSpots(looks, [ann])).rejects.toMatchObject({ code: "closed" });
    await expect(returnSpot(looks, ann)).rejects.toMatchObject({ code: "closed" });
    await database().call.update({ where: { id: call.callId }, data: { status: "closed", closedAt: NOW } });
    await expect(freeSpots(call.access, [ann])).rejects.toMatchObject({ code: "closed" });
    expect(await rowOf(ann)).toMatchObject({ stoppedAt: null, freedAt: null });
  });
});
