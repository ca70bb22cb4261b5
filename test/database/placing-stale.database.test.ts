import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import type { CallAccess } from "@/features/calls/access";
import { placingPeople, storedPlacing } from "@/features/recruiting/places/placing-data";
import { calculatePlacing, nextPlacing, runPlacing } from "@/features/recruiting/places/placing-mutations";
import { changePlace, givePlaces } from "@/features/recruiting/places/mutations";
import { database } from "@/server/database";
import { applicantsDocument } from "../factories/applicants";
import { makeViewer } from "./make-account";
import { apply, invited, NOW, placesCall, send, type PlacesCall } from "./places-call";

const asked = { considering: "yes", now: NOW } as const;

async function stored({ access }: { access: CallAccess }) {
  return await storedPlacing(access, new Date());
}

/** A call whose placing has just been calculated. */
async function calculated(wanted: Readonly<Record<string, number>>): Promise<PlacesCall> {
  const call = await placesCall(wanted);
  await calculatePlacing(call.access);
  return call;
}

describe("a stored placing is calculated again", () => {
  type Change = (call: PlacesCall, ann: string) => Promise<unknown>;
  const changes: readonly (readonly [string, Change])[] = [
    ["somebody applies", (call) => apply(call, "Bea", { bust: 98 })],
    ["a decision is made", (_, id) => database().application.update({ where: { id }, data: { decision: "maybe" } })],
    [
      "an application is withdrawn",
      (_, id) => database().application.update({ where: { id }, data: { withdrawnAt: NOW } }),
    ],
    ["an application is deleted", (_, id) => database().application.delete({ where: { id } })],
    ["a body is deleted", (_, applicationId) => database().applicationBody.delete({ where: { applicationId } })],
    [
      "somebody is moved by hand",
      ({ access }, applicationId) => changePlace(access, { applicationId, change: { kind: "move", size: "small" } }),
    ],
    [
      "more testers are wanted",
      ({ callId }) => database().place.updateMany({ where: { callId }, data: { wanted: 3, most: 3 } }),
    ],
    [
      "a tester answers",
      ({ callId }) => database().tester.updateMany({ where: { callId }, data: { declinedAt: NOW } }),
    ],
    ["a tester is gone", ({ callId }) => database().tester.deleteMany({ where: { callId } })],
    [
      "another body measurement is to decide",
      ({ callId }) => database().listing.update({ where: { callId }, data: { version: { increment: 1 } } }),
    ],
    [
      "a revision is saved",
      ({ access }) =>
        database().revision.create({
          data: {
            ...{ patternId: access.pattern.patternId, number: 2, reason: "Second" },
            document: applicantsDocument().pattern,
          },
        }),
    ],
  ];

  it.each(changes)("once %s", async (_what, change) => {
    const call = await calculated({ small: 1, medium: 1 });
    await apply(call, "Zoe", { bust: 98 });
    await givePlaces(call.access, asked);
    await send(call);
    const ann = await apply(call, "Ann", { bust: 90 });
    await calculatePlacing(call.access);
    expect(await stored(call)).toMatchObject({ status: "current" });
    await change(call, ann);
    expect(await stored(call)).toMatchObject({ status: "updating" });
    await runPlacing(call.callId);
    expect(await stored(call)).toMatchObject({ status: "current" });
  });

  it("in another call of the same owner, once a test is closed that an applicant had no report in", async () => {
    const first = await placesCall({ small: 1 });
    const second = await placesCall({ small: 1 }, { owner: first.owner });
    const { accountId } = await makeViewer();
    await apply(first, "Maja", { bust: 90, accountId });
    await givePlaces(first.access, asked);
    await send(first);
    await database().tester.updateMany({ where: { callId: first.callId }, data: { acceptedAt: NOW } });
    await apply(second, "Maja", { bust: 90, accountId });
    await calculatePlacing(second.access);
    await database().call.update({ where: { id: first.callId }, data: { title: "Another title" } });
    expect(await stored(second)).toMatchObject({ status: "current" });
    await database().call.update({ where: { id: first.callId }, data: { status: "closed" } });
    expect(await stored(second)).toMatchObject({ status: "updating" });
    await calculatePlacing(second.access);
    const [maja] = await placingPeople(second.access, { positions: [0], applications: [], testers: [] });
    expect(maja?.answer?.record).toEqual({ finished: 0, dropped: 1 });
    const { id: testerId, revisionId } = await database().tester.findFirstOrThrow({ where: { callId: first.callId } });
    await database().report.create({
      data: { testerId, revisionId: revisionId ?? "", version: 1, document: {}, idempotencyKey: randomUUID() },
    });
    expect(await stored(second)).toMatchObject({ status: "updating" });
  });

  it("not once something else is written of a tester", async () => {
    const call = await placesCall({ small: 1 });
    await apply(call, "Ann", { bust: 90 });
    await givePlaces(call.access, asked);
    await send(call);
    await calculatePlacing(call.access);
    await database().tester.updateMany({ where: { callId: call.callId }, data: { note: "Writes often." } });
    expect(await stored(call)).toMatchObject({ status: "current" });
  });

  it("by the worker, call after call until none is left, and by two at once only once", async () => {
    await database().placementChange.deleteMany();
    const calls = [await placesCall({ small: 1 }), await placesCall({ small: 1 })];
    for (let next = await nextPlacing(); next !== null; next = await nextPlacing()) await runPlacing(next);
    for (const call of calls) expect(await stored(call)).toMatchObject({ status: "current" });
    const [call] = calls;
    if (call === undefined) throw new Error("there is no call");
    await apply(call, "Ann", { bust: 90 });
    await Promise.all([1, 2, 3].map(() => calculatePlacing(call.access)));
    expect(await stored(call)).toMatchObject({ status: "current", board: { yes: { waiting: 1 } } });
  });

  it("not for a call that is gone, with whom what was stored goes", async () => {
    const call = await placesCall({ small: 1 });
    await apply(call, "Ann", { bust: 90 });
    await calculatePlacing(call.access);
    await database().call.delete({ where: { id: call.callId } });
    await runPlacing(call.callId);
    const where = { callId: call.callId };
    expect(await database().placement.count({ where })).toBe(0);
    expect(await database().placementPerson.count({ where })).toBe(0);
    expect(await database().placementChange.count({ where })).toBe(0);
  });

  it("and says so where it cannot be, until something changes", async () => {
    const call = await placesCall({ small: 1 });
    const id = await apply(call, "Ann", { bust: 90 });
    const { document } = await database().application.findUniqueOrThrow({ where: { id } });
    await database().application.update({ where: { id }, data: { document: {} } });
    await calculatePlacing(call.access);
    expect(await stored(call)).toMatchObject({ status: "failed", board: null });
    await database().application.update({ where: { id }, data: { document: document ?? {} } });
    await calculatePlacing(call.access);
    expect(await stored(call)).toMatchObject({ status: "current" });
    expect(await invited(call)).toEqual({});
  });
});
