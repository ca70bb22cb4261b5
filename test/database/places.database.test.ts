import { describe, expect, it } from "vitest";
import { placeApplicants } from "@/engine/places";
import { parseApplicants } from "@/engine/pattern";
import { callAccess } from "@/features/calls/access";
import { placingQuestion } from "../../src/features/recruiting/places/placing-question";
import { placingRows } from "@/features/recruiting/places/data";
import { changePlace, givePlaces, sendPlacing } from "@/features/recruiting/places/mutations";
import { placedNow } from "@/features/recruiting/places/placing";
import { database } from "@/server/database";
import { makeViewer } from "./make-account";
import { apply, invited, LATER, NOW, placesCall, seen, send, standing } from "./places-call";

const asked = { considering: "yes", now: NOW } as const;

describe("giving places", () => {
  it("writes what the engine answers over the very document that is handed out", async () => {
    const call = await placesCall({ small: 1, medium: 1, large: 1 });
    await apply(call, "Ann", { bust: 97 });
    await apply(call, "Bea", { bust: 98 });
    await apply(call, "Cleo", { bust: 107, decision: "maybe" });
    await apply(call, "Dora", { bust: 90, decision: "no" });
    await givePlaces(call.access, asked);
    // By hand: Ann is 7 cm above S, within its reach of 8, and Bea 10 cm below L, within 10: with two people for three
    // sizes the ends come first. Cleo has a maybe.
    expect(await standing(call)).toEqual({ Ann: "small", Bea: "large" });
    const { document } = placingQuestion(await placingRows(call.access), asked);
    const parsed = parseApplicants(JSON.parse(JSON.stringify(document)));
    expect(parsed).toMatchObject({ ok: true });
    expect(placeApplicants(document, { endsFirst: true })).toMatchObject({
      placed: [
        { applicant: "applicant-1", size: "small" },
        { applicant: "applicant-2", size: "large" },
      ],
      waiting: [{ applicant: "applicant-4", reason: { kind: "excluded" } }],
    });
    await givePlaces(call.access, { ...asked, considering: "maybe" });
    expect(await standing(call)).toEqual({ Ann: "small", Bea: "medium", Cleo: "large" });
  });

  it("leaves whom the designer settled, who is invited and who withdrew, and gives the others what is left", async () => {
    const call = await placesCall({ small: 1, medium: 2 });
    const [ann, bea, cleo] = [
      await apply(call, "Ann", { bust: 98 }),
      await apply(call, "Bea", { bust: 98 }),
      await apply(call, "Cleo", { bust: 98 }),
    ];
    await changePlace(call.access, { applicationId: ann, change: { kind: "move", size: "small" } });
    await changePlace(call.access, { applicationId: bea, change: { kind: "leave-waiting" } });
    await givePlaces(call.access, asked);
    expect(await standing(call)).toEqual({ "Ann (lock)": "small", Cleo: "medium" });
    expect(await send(call)).toBe(2);
    await apply(call, "Dora", { bust: 98 });
    const eve = await apply(call, "Eve", { bust: 98 });
    await givePlaces(call.access, asked);
    // One of two places in M is Cleo's, who is invited; Dora came before Eve.
    expect(await standing(call)).toMatchObject({ Dora: "medium" });
    expect(await standing(call)).not.toHaveProperty("Eve");
    await changePlace(call.access, { applicationId: eve, change: { kind: "lock" } }).catch(() => undefined);
    await database().application.updateMany({
      where: { id: { not: cleo }, callId: call.callId },
      data: { withdrawnAt: NOW },
    });
    await givePlaces(call.access, asked);
    expect(placedNow(await placingRows(call.access))).toEqual([]);
  });

  it("refuses where more are locked in a size than it may have, and says so", async () => {
    const call = await placesCall({ small: 1 }, { most: 2 });
    for (const name of ["Ann", "Bea"]) {
      const applicationId = await apply(call, name, { bust: 90 });
      await changePlace(call.access, { applicationId, change: { kind: "move", size: "small" } });
    }
    await database().place.updateMany({ where: { callId: call.callId }, data: { most: 1 } });
    await expect(givePlaces(call.access, asked)).rejects.toMatchObject({
      code: "no-place",
      message: expect.stringContaining("2 applicants are locked in S, where 1 tester is wanted"),
    });
  });

  it("passes over who has given no body where it decides the fit", async () => {
    const call = await placesCall({ small: 1 });
    await apply(call, "Ann", { bust: null });
    await givePlaces(call.access, asked);
    expect(await standing(call)).toEqual({});
    const { withoutBody } = placingQuestion(await placingRows(call.access), asked);
    expect(withoutBody).toMatchObject([{ applicant: { name: "Ann" }, missing: ["bust"] }]);
  });
});

describe("settling by hand", () => {
  it("moves and locks one applicant, and nobody else", async () => {
    const call = await placesCall({ small: 2, medium: 2 });
    const ann = await apply(call, "Ann", { bust: 90 });
    await apply(call, "Bea", { bust: 98 });
    await givePlaces(call.access, asked);
    const settle = (change: Parameters<typeof changePlace>[1]["change"]) =>
      changePlace(call.access, { applicationId: ann, change });
    await settle({ kind: "move", size: "medium" });
    expect(await standing(call)).toEqual({ "Ann (lock)": "medium", Bea: "medium" });
    await settle({ kind: "unlock" });
    expect(await standing(call)).toEqual({ Ann: "medium", Bea: "medium" });
    await settle({ kind: "lock" });
    await settle({ kind: "leave-waiting" });
    expect(await standing(call)).toEqual({ Bea: "medium" });
    await settle({ kind: "consider" });
    await givePlaces(call.access, asked);
    expect(await standing(call)).toEqual({ Ann: "small", Bea: "medium" });
  });

  it("is refused of a size that is not, of who is invited or withdrew, and of another call's applicant", async () => {
    const [call, other] = [await placesCall({ small: 1 }), await placesCall({ small: 1 })];
    const [ann, bea] = [await apply(call, "Ann", { bust: 90 }), await apply(call, "Bea", { bust: 90 })];
    const zoe = await apply(other, "Zoe", { bust: 90 });
    await givePlaces(call.access, asked);
    await send(call);
    await database().application.update({ where: { id: bea }, data: { withdrawnAt: NOW } });
    const move = (applicationId: string, size = "medium") =>
      changePlace(call.access, { applicationId, change: { kind: "move", size } });
    for (const id of [ann, bea, zoe]) await expect(move(id)).rejects.toMatchObject({ code: "changed-meanwhile" });
    await expect(move(ann, "gone")).rejects.toMatchObject({ code: "not-found" });
    expect(await standing(other)).toEqual({});
  });

  it("is refused from who may only look, from strangers, and once the call is closed", async () => {
    const call = await placesCall({ small: 1 });
    const applicationId = await apply(call, "Ann", { bust: 90 });
    const [viewer, stranger] = [await makeViewer(), await makeViewer()];
    await database().membership.create({
      data: { patternId: call.patternId, accountId: viewer.accountId, role: "viewer" },
    });
    await expect(callAccess(viewer, call.callId, "editor")).rejects.toMatchObject({ code: "not-allowed" });
    await expect(callAccess(stranger, call.callId, "viewer")).rejects.toMatchObject({ code: "not-found" });
    for (const { accountId } of [viewer, stranger]) {
      const forged = { ...call.access, pattern: { ...call.access.pattern, accountId } };
      await expect(givePlaces(forged, asked)).rejects.toMatchObject({ code: "closed" });
      const change = { kind: "move", size: "small" } as const;
      await expect(changePlace(forged, { applicationId, change })).rejects.toMatchObject({ code: "closed" });
      await expect(sendPlacing(forged, { saw: await seen(call), expiresAt: LATER })).rejects.toMatchObject({
        code: "closed",
      });
    }
    await givePlaces(call.access, asked);
    await database().call.update({ where: { id: call.callId }, data: { status: "closed" } });
    await expect(givePlaces(call.access, asked)).rejects.toMatchObject({ code: "closed" });
    await expect(send(call)).rejects.toMatchObject({ code: "closed" });
    expect(await invited(call)).toEqual({});
  });
});

describe("sending", () => {
  it("invites whom the sender saw, once, and nobody where the placing has changed since", async () => {
    const call = await placesCall({ small: 1, medium: 1 });
    const ann = await apply(call, "Ann", { bust: 90 });
    await apply(call, "Bea", { bust: 98 });
    await givePlaces(call.access, asked);
    const saw = await seen(call);
    await changePlace(call.access, { applicationId: ann, change: { kind: "leave-waiting" } });
    const late = sendPlacing(call.access, { saw, expiresAt: LATER });
    await expect(late).rejects.toMatchObject({
      code: "changed-meanwhile",
      message: expect.stringContaining("Nothing was sent"),
    });
    expect(await invited(call)).toEqual({});
    expect(await send(call)).toBe(1);
    expect(await invited(call)).toEqual({ Bea: "medium" });
    expect(await sendPlacing(call.access, { saw, expiresAt: LATER })).toBe(0);
  });

  it("by two helpers at once invites each applicant once", async () => {
    const call = await placesCall({ small: 3, medium: 2 });
    for (const name of ["Ann", "Bea", "Cleo"]) await apply(call, name, { bust: 90 });
    await givePlaces(call.access, asked);
    const saw = await seen(call);
    const sent = await Promise.all([1, 2, 3].map(() => sendPlacing(call.access, { saw, expiresAt: LATER })));
    expect(sent.toSorted()).toEqual([0, 0, 3]);
    // M is to have one at least, and is within reach of all three: the last who came goes there.
    expect(await invited(call)).toEqual({ Ann: "small", Bea: "small", Cleo: "medium" });
  });

  it("invites nobody where more stand in a size than it has places", async () => {
    const call = await placesCall({ small: 1, medium: 1 });
    for (const name of ["Ann", "Bea"]) await apply(call, name, { bust: 90 });
    await database().application.updateMany({ where: { callId: call.callId }, data: { size: "small", pin: "size" } });
    await expect(send(call)).rejects.toMatchObject({ code: "no-place" });
    expect(await invited(call)).toEqual({});
  });
});
