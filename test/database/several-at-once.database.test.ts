import { beforeEach, describe, expect, it } from "vitest";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { storeDecisions } from "@/features/recruiting/applications/mutations";
import { database } from "@/server/database";
import { readRecipients } from "../../src/features/testing/writing/recipients-data";
import { makeViewer } from "./make-account";
import { inviteTo, makeCall } from "./invited-tester";
import { apply, placesCall, type PlacesCall } from "./places-call";

async function lookingAt({ callId, pattern }: CallAccess): Promise<CallAccess> {
  const vera = await makeViewer("Vera");
  const part = { patternId: pattern.patternId, accountId: vera.accountId, role: "viewer" } as const;
  await database().membership.create({ data: part });
  return await callAccess(vera, callId, "viewer");
}

describe("one decision on several applications", () => {
  let call: PlacesCall;
  let ids: string[];

  beforeEach(async () => {
    call = await placesCall({ small: 1 });
    ids = [];
    for (const name of ["Ann", "Bea", "Cleo"]) ids.push(await apply(call, name, { bust: 90, decision: null }));
  });

  const decisions = async () => {
    const where = { callId: call.callId };
    const rows = await database().application.findMany({ where, orderBy: { position: "asc" } });
    return rows.map(({ decision }) => decision);
  };

  it("is stored on those that were chosen, and on no withdrawn one", async () => {
    await database().application.update({ where: { id: ids[1] ?? "" }, data: { withdrawnAt: new Date() } });
    const chosen = ids.slice(0, 2);
    expect(await storeDecisions(call.access, { applicationIds: chosen, decision: "no" })).toBe(1);
    expect(await decisions()).toEqual(["no", null, null]);
  });

  it("is refused for another designer's applications, to a helper who only looks, and in a closed call", async () => {
    const NONE = { code: "changed-meanwhile" };
    const others = await placesCall({ small: 1 });
    const own = await apply(others, "Dora", { bust: 90, decision: null });
    const asked = { applicationIds: ids, decision: "yes" } as const;
    await expect(storeDecisions(others.access, asked)).rejects.toMatchObject(NONE);
    await expect(storeDecisions(await lookingAt(call.access), asked)).rejects.toMatchObject(NONE);
    // Ids of two calls in one form: only the proved one's are written.
    expect(await storeDecisions(others.access, { ...asked, applicationIds: [...ids, own] })).toBe(1);
    expect(await decisions()).toEqual([null, null, null]);
    await database().call.update({ where: { id: call.callId }, data: { status: "closed", closedAt: new Date() } });
    await expect(storeDecisions(call.access, asked)).rejects.toMatchObject(NONE);
  });
});

describe("addresses for a message to several testers", () => {
  it("are those of the designer's own testers, and no tester's of others, nor for a helper who only looks", async () => {
    const mine = await makeCall(await makeViewer("Dana"));
    const theirs = await makeCall(await makeViewer("Sam"));
    const [own, other] = [await inviteTo(mine), await inviteTo(theirs)];
    expect(await readRecipients(mine, [own, other])).toEqual([{ name: "Bea", email: "bea@example.org" }]);
    expect(await readRecipients(theirs, [own])).toEqual([]);
    expect(await readRecipients(await lookingAt(mine), [own])).toEqual([]);
  });
});
