import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import { changePlace, givePlaces } from "@/features/recruiting/places/mutations";
import { database } from "@/server/database";
import { inviteByHand, inviteLonger } from "../../src/features/testing/progress/progress-mutations";
import { endTest, letGoOn } from "../../src/features/testing/progress/person-mutations";
import { returnSpot } from "../../src/features/testing/progress/spot-mutations";
import { goOnAfterAll } from "../../src/features/testing/home/milestone-mutations";
import type { TesterAccess } from "@/features/testing/home/access";
import { placingBoard } from "../../src/features/recruiting/places/placing-board";
import { placingRows } from "@/features/recruiting/places/data";
import { readInvited } from "../../src/features/testing/invited/invited-data";
import { acceptInvited } from "../../src/features/testing/invited/invited-mutations";
import { invitationLink, invitedAccess } from "@/features/recruiting/invitations/access";
import { invitedState } from "../../src/features/testing/invited/invited-state";
import { apply, invited, LATER, NOW, placesCall, send, standing, type PlacesCall } from "./places-call";

const asked = { considering: "yes", now: NOW } as const;
const FULL = { code: "no-place", message: "Size S already has 3 testers, the most you set." };

let call: PlacesCall;
const ids = new Map<string, string>();
const move = async (name: string, size = "small") =>
  await changePlace(call.access, { applicationId: ids.get(name) ?? "", change: { kind: "move", size } });
const byHand = async (size: string) =>
  await inviteByHand(call.access, { name: "Hana", email: "hana@example.org", size, expiresAt: LATER, self: null });
const testerOf = async (name: string) =>
  await database().tester.findFirstOrThrow({ where: { callId: call.callId, contact: { name } } });

/** Two are wanted in S, three at most. Ann, Bea, Cleo, Dora and Edda would all take it. */
beforeEach(async () => {
  call = await placesCall({ small: 2 }, { most: 3 });
  await database().place.create({ data: { callId: call.callId, size: "medium", least: 0, wanted: 0, most: 0 } });
  for (const name of ["Ann", "Bea", "Cleo", "Dora", "Edda"]) ids.set(name, await apply(call, name, { bust: 90 }));
  await givePlaces(call.access, asked);
});

/** All three of S are invited: two assigned, and Cleo moved there. */
async function full() {
  await move("Cleo");
  expect(await send(call)).toBe(3);
}

describe("the most testers of a size", () => {
  it("are not reached by assigning sizes, which fills what is wanted", async () => {
    expect(await standing(call)).toEqual({ Ann: "small", Bea: "small" });
  });

  it("are as far as people are moved, with one sentence that says so", async () => {
    await move("Cleo");
    await expect(move("Dora")).rejects.toMatchObject(FULL);
    // The lock takes one of the two that are assigned.
    await givePlaces(call.access, asked);
    expect(await standing(call)).toEqual({ Ann: "small", "Cleo (lock)": "small" });
    expect(placingBoard(await placingRows(call.access), NOW).board.sizes[0]).toMatchObject({
      wanted: 2,
      most: 3,
      over: 0,
    });
    await move("Cleo");
    await expect(move("Dora", "medium")).rejects.toMatchObject({
      message: "Size M takes no testers: the most you set is 0.",
    });
  });

  it("are as far as invitations go, with or without an application", async () => {
    await full();
    await expect(move("Dora")).rejects.toMatchObject(FULL);
    await expect(byHand("small")).rejects.toMatchObject(FULL);
    expect(Object.keys(await invited(call))).toEqual(["Ann", "Bea", "Cleo"]);
    await byHand("large");
  });

  it("let every one of them accept", async () => {
    await full();
    const testers = await database().tester.findMany({ where: { callId: call.callId } });
    const choices = { unit: "cm", terms: "us", timeZone: "Europe/Lisbon", viewer: null } as const;
    for (const { id, linkVersion } of testers) {
      const link = await invitedAccess(invitationLink({ testerId: id, linkVersion }));
      expect(invitedState(await readInvited(link), { accountId: null, isLetIn: false }, new Date())).toBe("open");
      expect(await acceptInvited(link, choices)).toBe(true);
    }
  });

  it("count an invitation that is put off again, and a test that goes on", async () => {
    await full();
    const cleo = await testerOf("Cleo");
    await database().tester.update({ where: { id: cleo.id }, data: { declinedAt: NOW } });
    const ann = await testerOf("Ann");
    await database().tester.update({ where: { id: ann.id }, data: { acceptedAt: NOW } });
    await endTest(call.access, ann.id);
    await byHand("small");
    await byHand("small");
    await expect(inviteLonger(call.access, cleo.id, LATER)).rejects.toMatchObject(FULL);
    await expect(letGoOn(call.access, ann.id)).rejects.toMatchObject(FULL);
    await database().tester.updateMany({
      where: { callId: call.callId, applicationId: null },
      data: { declinedAt: NOW },
    });
    await letGoOn(call.access, ann.id);
  });

  it("count whoever goes on, in whatever way they stopped, with or without an application", async () => {
    const { testerId } = await byHand("small");
    await send(call);
    const own = { testerId, callId: call.callId, accountId: null, linkVersion: 1 } as TesterAccess;
    const stop = async (stopped: object) =>
      await database().tester.update({
        where: { id: testerId },
        data: { acceptedAt: NOW, stoppedAt: NOW, freedAt: null, stoppedByDesigner: false, ...stopped },
      });
    const ways = [
      { stopped: {}, goOn: async () => await goOnAfterAll(own, randomUUID()) },
      { stopped: { freedAt: NOW }, goOn: async () => await returnSpot(call.access, testerId) },
      { stopped: { stoppedByDesigner: true }, goOn: async () => await letGoOn(call.access, testerId) },
    ];
    for (const { stopped, goOn } of ways) {
      await stop(stopped);
      const other = await byHand("small");
      await expect(goOn()).rejects.toMatchObject({ code: "no-place" });
      await database().tester.update({ where: { id: other.testerId }, data: { declinedAt: NOW } });
      await goOn();
      expect(await database().tester.findUnique({ where: { id: testerId } })).toMatchObject({
        ...{ stoppedAt: null, freedAt: null, stoppedByDesigner: false },
      });
    }
  });
});
