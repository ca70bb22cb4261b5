import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { invitationRecord, placingRows } from "@/features/recruiting/places/data";
import { changePlace, fillFreePlace, givePlaces } from "@/features/recruiting/places/mutations";
import { invitationLink, invitedAccess } from "@/features/recruiting/invitations/access";
import { type TesterAccess } from "@/features/testing/home/access";
import { readInvited } from "../../src/features/testing/invited/invited-data";
import { acceptInvited } from "../../src/features/testing/invited/invited-mutations";
import { invitedState } from "../../src/features/testing/invited/invited-state";
import { goOnAfterAll } from "@/features/testing/home/milestone-mutations";
import { database } from "@/server/database";
import { makeViewer } from "./make-account";
import { apply, invited, LATER, NOW, placesCall, send } from "./places-call";

const asked = { considering: "yes", now: NOW } as const;

describe("a place that is free again", () => {
  const dates = { startOn: "2026-11-26", swatchBy: "2026-12-05", reportBy: "2027-01-14" };

  /** Ann had the only spot in S and sent a report before stopping; Bea and Cleo wait, Dora is invited to M. */
  async function freed() {
    const call = await placesCall({ small: 1, medium: 1 });
    await apply(call, "Ann", { bust: 90 });
    await apply(call, "Dora", { bust: 98 });
    const [bea, cleo] = [await apply(call, "Bea", { bust: 91 }), await apply(call, "Cleo", { bust: 92 })];
    await givePlaces(call.access, asked);
    await send(call);
    const where = { callId: call.callId, contact: { name: "Ann" } };
    const ann = await database().tester.findFirstOrThrow({ where });
    await database().report.create({
      data: {
        testerId: ann.id,
        version: 1,
        revisionId: ann.revisionId ?? "",
        document: {},
        idempotencyKey: randomUUID(),
      },
    });
    await database().tester.update({ where: { id: ann.id }, data: { acceptedAt: NOW, stoppedAt: NOW } });
    const fill = (applicationId: string) =>
      fillFreePlace(call.access, { applicationId, size: "small", expiresAt: LATER, dates, now: NOW });
    return { call, ann, bea, cleo, fill };
  }

  it("is filled with dates of its own, moves nobody, and what the dropout sent stays", async () => {
    const { call, ann, bea, cleo, fill } = await freed();
    await fill(bea);
    expect(await invited(call)).toEqual({ Ann: "small", Dora: "medium", Bea: "small" });
    const tester = await database().tester.findUniqueOrThrow({ where: { applicationId: bea } });
    expect(tester).toMatchObject({ dates, invitationExpiresAt: LATER, timeZone: "Pacific/Auckland", terms: "uk" });
    expect(await database().report.count({ where: { testerId: ann.id } })).toBe(1);
    await expect(fill(cleo)).rejects.toMatchObject({ code: "no-place" });
    await expect(fill(bea)).rejects.toMatchObject({ code: "changed-meanwhile" });
  });

  it("goes to one of two who are invited at once", async () => {
    const { call, bea, cleo, fill } = await freed();
    const filled = await Promise.allSettled([fill(bea), fill(cleo)]);
    expect(filled.map(({ status }) => status).toSorted()).toEqual(["fulfilled", "rejected"]);
    expect(filled.find(({ status }) => status === "rejected")).toMatchObject({ reason: { code: "no-place" } });
    expect(Object.values(await invited(call))).toEqual(["small", "medium", "small"]);
  });

  it("is not free where somebody stands in it already", async () => {
    const { call, bea, cleo, fill } = await freed();
    await changePlace(call.access, { applicationId: cleo, change: { kind: "move", size: "small" } });
    await expect(fill(bea)).rejects.toMatchObject({ code: "no-place" });
    await expect(fill(cleo)).rejects.toMatchObject({ code: "changed-meanwhile" });
    expect(await send(call)).toBe(1);
  });

  it("can be taken up again by the tester who stopped until it is filled, and again after a decline", async () => {
    const { call, ann, bea, fill } = await freed();
    const own = { testerId: ann.id, callId: call.callId, accountId: null, linkVersion: 1 } as TesterAccess;
    await fill(bea);
    await expect(goOnAfterAll(own, randomUUID())).rejects.toMatchObject({ code: "no-place" });
    const where = { id: ann.id };
    expect(await database().tester.findUniqueOrThrow({ where })).toMatchObject({ stoppedAt: NOW });
    expect(await database().milestone.count({ where: { testerId: ann.id } })).toBe(0);
    await database().tester.update({ where: { applicationId: bea }, data: { declinedAt: NOW } });
    await goOnAfterAll(own, randomUUID());
    expect(await database().tester.findUniqueOrThrow({ where })).toMatchObject({ stoppedAt: null });
  });
});

describe("a place that two are invited to", () => {
  const choices = { unit: "cm", terms: "us", timeZone: "Europe/Lisbon", viewer: null } as const;

  /** Ann and Bea are both invited to the one place in S, as where Ann's invitation had ended and was put off again. */
  async function contested() {
    const call = await placesCall({ small: 2 });
    await apply(call, "Ann", { bust: 90 });
    await apply(call, "Bea", { bust: 91 });
    await givePlaces(call.access, asked);
    await send(call);
    await database().place.updateMany({ where: { callId: call.callId }, data: { wanted: 1, most: 1 } });
    const testers = await database().tester.findMany({ where: { callId: call.callId } });
    return await Promise.all(
      testers.map(({ id, linkVersion }) => invitedAccess(invitationLink({ testerId: id, linkVersion }))),
    );
  }

  it("goes to one of them, whose acceptances come at once, and the other's link says that it is gone", async () => {
    const links = await contested();
    const accepted = await Promise.all(links.map((link) => acceptInvited(link, choices)));
    expect(accepted.toSorted()).toEqual([false, true]);
    const visitor = { accountId: null, isLetIn: false };
    const states = await Promise.all(
      links.map(async (link) => invitedState(await readInvited(link), visitor, new Date())),
    );
    expect(states.toSorted()).toEqual(["go-on", "place-gone"]);
    expect(states.map((state) => state === "go-on")).toEqual(accepted);
  });
});

describe("what is on record", () => {
  it("is of the same owner's other calls alone", async () => {
    const first = await placesCall({ small: 9 });
    const [mine, others] = [await placesCall({ small: 1 }, { owner: first.owner }), await placesCall({ small: 1 })];
    const { accountId } = await makeViewer();
    await apply(first, "Maja", { bust: 90, accountId });
    await apply(first, "Nora", { bust: 90 });
    await givePlaces(first.access, asked);
    await send(first);
    await database().tester.updateMany({ where: { callId: first.callId }, data: { acceptedAt: NOW } });
    await database().call.update({ where: { id: first.callId }, data: { status: "closed" } });
    for (const call of [mine, others]) await apply(call, "Maja", { bust: 90, accountId });
    expect((await placingRows(mine.access)).applicants[0]?.record).toEqual({ finished: 0, dropped: 1 });
    expect((await placingRows(others.access)).applicants[0]?.record).toBeNull();
    expect(await invitationRecord(mine.access)).toEqual({ invited: 2, reported: 0 });
    expect(await invitationRecord(others.access)).toEqual({ invited: 0, reported: 0 });
  });
});
