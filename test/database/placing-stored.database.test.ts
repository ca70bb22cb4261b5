import { describe, expect, it } from "vitest";
import type { CallAccess } from "@/features/calls/access";
import { placingPeople, storedPlacing } from "@/features/recruiting/places/placing-data";
import { calculatePlacing } from "@/features/recruiting/places/placing-mutations";
import { givePlaces } from "@/features/recruiting/places/mutations";
import { database } from "@/server/database";
import { makeViewer } from "./make-account";
import { apply, LATER, NOW, placesCall, send, type PlacesCall } from "./places-call";

const asked = { considering: "yes", now: NOW } as const;

async function stored({ access }: { access: CallAccess }) {
  return await storedPlacing(access, new Date());
}

/** Those on the board by position: name and size. */
async function onBoard({ access }: PlacesCall): Promise<readonly (readonly [string | null, string | null])[]> {
  const people = await placingPeople(access, { positions: [0, 1, 2, 3, 4, 5, 6], applications: [], testers: [] });
  return people.map(({ name, size }) => [name, size] as const);
}

describe("what is stored of a placing", () => {
  it("says who stands where, who waits and why, and whom giving places anew would move", async () => {
    const call = await placesCall({ small: 1, medium: 1, large: 1 });
    const ann = await apply(call, "Ann", { bust: 90 });
    const bea = await apply(call, "Bea", { bust: 91 });
    const cleo = await apply(call, "Cleo", { bust: 107, decision: "maybe" });
    await apply(call, "Dora", { bust: 90, decision: "no" });
    await apply(call, "Eve", { bust: null });
    await calculatePlacing(call.access);
    const { status, board } = await stored(call);
    expect(status).toBe("current");
    // By hand: S is Ann's, at 0; Bea is 7 cm below M, within its reach of 8. Nobody with a yes fits L.
    expect(board?.yes.wouldMove).toEqual({
      many: 2,
      first: [
        { application: ann, from: null, to: "small" },
        { application: bea, from: null, to: "medium" },
      ],
    });
    expect(board?.maybe.wouldMove?.first[2]).toEqual({ application: cleo, from: null, to: "large" });
    expect(board).toMatchObject({
      waitingFrom: 0,
      yes: { waiting: 2 },
      maybe: { waiting: 3 },
      words: { maybe: 1, no: 1 },
    });
    expect(board?.yes.withoutBody).toMatchObject({ many: 1, first: [{ missing: ["bust"] }] });
    expect(await onBoard(call)).toEqual([
      ["Ann", null],
      ["Bea", null],
      ["Cleo", null],
    ]);
    await givePlaces(call.access, asked);
    await calculatePlacing(call.access);
    const given = await stored(call);
    expect(given.board?.yes.wouldMove).toEqual({ many: 0, first: [] });
    expect(await onBoard(call)).toEqual([
      ["Ann", "small"],
      ["Bea", "medium"],
      ["Cleo", null],
    ]);
    const [first] = await placingPeople(call.access, { positions: [0], applications: [], testers: [] });
    expect(first?.answer?.yes).toEqual({
      size: "small",
      reason: { kind: "best", isNearestBody: true, isFirstChoice: false },
    });
  });

  it("holds neither a name nor a body", async () => {
    const call = await placesCall({ small: 1 });
    await apply(call, "Ann Unmistakable", { bust: 91.37 });
    await calculatePlacing(call.access);
    const rows = await database().$queryRaw<{ text: string }[]>`
      SELECT to_jsonb(placement)::text || coalesce(jsonb_agg(to_jsonb(placement_person))::text, '') AS text
      FROM placement LEFT JOIN placement_person USING (call_id) WHERE call_id = ${call.callId}::uuid GROUP BY placement.*`;
    expect(rows).toHaveLength(1);
    expect(rows[0]?.text).toContain("small");
    // 1.37 is how much wider the person is than the size.
    for (const secret of ["Unmistakable", "91.37", "1.37"]) expect(rows[0]?.text).not.toContain(secret);
  });

  it("draws more than sixty people as bars that count each of them once", async () => {
    const call = await placesCall({ small: 1 });
    for (let at = 0; at < 61; at += 1) await apply(call, `Ann ${at}`, { bust: 84.2 + (at % 13) });
    await calculatePlacing(call.access);
    const crowd = (await stored(call)).board?.yes.crowds?.bust;
    expect(crowd?.bins.flatMap(({ groups }) => groups).reduce((sum, { many }) => sum + many, 0)).toBe(61);
    // The reaches of S and its neighbours are wider than the bodies: S alone has places, 82 to 98 cm.
    expect(crowd).toMatchObject({ fromCm: 82, toCm: 98 });
  });

  it("is not current any more once an invitation has ended", async () => {
    const call = await placesCall({ small: 1 });
    await apply(call, "Ann", { bust: 90 });
    await givePlaces(call.access, asked);
    await send(call);
    await calculatePlacing(call.access);
    expect(await stored(call)).toMatchObject({ status: "current", board: { sizes: [{ invited: 1 }, {}, {}] } });
    expect(await storedPlacing(call.access, LATER)).toMatchObject({ status: "updating" });
  });

  it("is told to nobody but those who have a part in the pattern", async () => {
    const call = await placesCall({ small: 1 });
    const ann = await apply(call, "Ann", { bust: 90 });
    await calculatePlacing(call.access);
    const [helper, stranger] = [await makeViewer(), await makeViewer()];
    await database().membership.create({
      data: { patternId: call.patternId, accountId: helper.accountId, role: "viewer" },
    });
    const as = ({ accountId }: { accountId: string }) => ({
      ...call.access,
      pattern: { ...call.access.pattern, accountId },
    });
    const everybody = { positions: [0], applications: [ann], testers: [] };
    expect(await storedPlacing(as(helper), new Date())).toMatchObject({ status: "current" });
    expect(await placingPeople(as(helper), everybody)).toMatchObject([{ name: "Ann" }]);
    expect(await storedPlacing(as(stranger), new Date())).toMatchObject({ board: null });
    expect(await placingPeople(as(stranger), everybody)).toEqual([]);
    const other = await placesCall({ small: 1 });
    expect(await placingPeople(other.access, everybody)).toEqual([]);
  });
});
