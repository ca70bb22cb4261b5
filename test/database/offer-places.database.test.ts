import { beforeEach, describe, expect, it } from "vitest";
import { callAccess } from "@/features/calls/access";
import { changePlace, givePlaces } from "@/features/recruiting/places/mutations";
import { offerPlaces } from "@/features/recruiting/places/offer-mutations";
import { database } from "@/server/database";
import { makeViewer } from "./make-account";
import { apply, invited, LATER, NOW, placesCall, send, type PlacesCall } from "./places-call";

let call: PlacesCall;
const ids = new Map<string, string>();
const offer = async (...names: readonly string[]) =>
  await offerPlaces(call.access, { applicationIds: names.map((name) => ids.get(name) ?? ""), expiresAt: LATER });

/** Ann and Bea are assigned to S, which may have two; Cleo waits, Dora is declined, Edda has withdrawn. */
beforeEach(async () => {
  call = await placesCall({ small: 2 });
  for (const name of ["Ann", "Bea", "Cleo"]) ids.set(name, await apply(call, name, { bust: 90 }));
  ids.set("Dora", await apply(call, "Dora", { bust: 90, decision: "no" }));
  ids.set("Edda", await apply(call, "Edda", { bust: 90 }));
  await database().application.update({ where: { id: ids.get("Edda") }, data: { withdrawnAt: NOW } });
  await givePlaces(call.access, { considering: "yes", now: NOW });
});

describe("offering places to several at once", () => {
  it("invites all who have a size, and says of each other why not", async () => {
    expect(await offer("Edda", "Dora", "Cleo", "Bea", "Ann")).toEqual({
      invited: ["Ann", "Bea"],
      refused: [
        { name: "Cleo", why: "They have no size yet." },
        { name: "Dora", why: "You declined them." },
        { name: "Edda", why: "They have withdrawn." },
      ],
    });
    expect(await invited(call)).toEqual({ Ann: "small", Bea: "small" });
    expect(await offer("Ann", "Cleo")).toEqual({
      invited: [],
      refused: [
        { name: "Cleo", why: "They have no size yet." },
        { name: "Ann", why: "They are invited already." },
      ],
    });
  });

  it("invites in the order of their applications as far as the most testers of a size", async () => {
    await database().place.updateMany({ where: { callId: call.callId }, data: { most: 3 } });
    await changePlace(call.access, { applicationId: ids.get("Cleo") ?? "", change: { kind: "move", size: "small" } });
    await database().place.updateMany({ where: { callId: call.callId }, data: { most: 2 } });
    expect(await offer("Cleo", "Bea", "Ann")).toEqual({
      invited: ["Ann", "Bea"],
      refused: [{ name: "Cleo", why: "Size S already has 2 testers, the most you set." }],
    });
    expect(await send(call).catch((error: unknown) => error)).toMatchObject({ code: "no-place" });
  });

  it("is for whoever may edit an open call, and invites each once where two do it at once", async () => {
    const both = await Promise.all([offer("Ann", "Bea"), offer("Ann", "Bea")]);
    expect(both.map((each) => each.invited.length).toSorted()).toEqual([0, 2]);
    const vera = await makeViewer();
    await database().membership.create({
      data: { patternId: call.patternId, accountId: vera.accountId, role: "viewer" },
    });
    const looks = await callAccess(vera, call.callId, "viewer");
    const asked = { applicationIds: [ids.get("Cleo") ?? ""], expiresAt: LATER };
    await expect(offerPlaces(looks, asked)).rejects.toMatchObject({ code: "closed" });
    const others = await placesCall({ small: 1 });
    expect(await offerPlaces(others.access, asked)).toEqual({ invited: [], refused: [] });
  });
});
