import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { invitationRecord, placingRows } from "@/features/places/data";
import { changePlace, fillFreePlace, givePlaces } from "@/features/places/mutations";
import { database } from "@/server/database";
import { apply, invited, LATER, NOW, person, placesCall, send } from "./places-call";

const asked = { considering: "yes", now: NOW } as const;

describe("a place that is free again", () => {
  const dates = { startOn: "2026-11-26", swatchBy: "2026-12-05", reportBy: "2027-01-14" };

  /** Ann had the one place in S and has sent a report before she had to stop; Bea and Cleo wait, Dora is invited to M. */
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
        submissionKey: randomUUID(),
      },
    });
    await database().tester.update({ where: { id: ann.id }, data: { acceptedAt: NOW, stoppedAt: NOW } });
    const fill = (applicationId: string) =>
      fillFreePlace(call.access, { applicationId, size: "small", endsAt: LATER, dates, now: NOW });
    return { call, ann, bea, cleo, fill };
  }

  it("is filled with days of her own, moves nobody, and what the drop-out sent stays", async () => {
    const { call, ann, bea, cleo, fill } = await freed();
    await fill(bea);
    expect(await invited(call)).toEqual({ Ann: "small", Dora: "medium", Bea: "small" });
    const tester = await database().tester.findUniqueOrThrow({ where: { applicationId: bea } });
    expect(tester).toMatchObject({ dates, invitationEndsAt: LATER, timeZone: "Pacific/Auckland", terms: "uk" });
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
});

describe("what is on record", () => {
  it("is of the same owner's other calls alone", async () => {
    const first = await placesCall({ small: 9 });
    const [mine, others] = [await placesCall({ small: 1 }, { owner: first.owner }), await placesCall({ small: 1 })];
    const { accountId } = await person();
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
