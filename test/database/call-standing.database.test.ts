import { expect, it } from "vitest";
import { callStanding } from "@/features/calls/standing-data";
import { changePlace } from "@/features/recruiting/places/mutations";
import { database } from "@/server/database";
import { apply, NOW, placesCall, send } from "./places-call";

it("tells how many applied, wait for a decision, stand in a size or in none, and are invited", async () => {
  const call = await placesCall({ small: 2, medium: 2 });
  const [ann, bea, , , eve] = [
    await apply(call, "Ann", { bust: 90 }),
    await apply(call, "Bea", { bust: 98 }),
    await apply(call, "Cleo", { bust: 98 }),
    await apply(call, "Dora", { bust: 98, decision: null }),
    await apply(call, "Eve", { bust: 98 }),
  ];
  await database().application.update({ where: { id: eve }, data: { withdrawnAt: NOW } });
  await changePlace(call.access, { applicationId: ann, change: { kind: "move", size: "small" } });
  await send(call);
  await changePlace(call.access, { applicationId: bea, change: { kind: "move", size: "medium" } });
  // By hand: Eve has withdrawn, Ann is invited, Bea stands in M, Cleo has a yes and no size, Dora no decision.
  expect(await callStanding(call.access)).toMatchObject({
    ...{ applied: 4, undecided: 1, unplaced: 1, placed: 1, invited: 1, questions: 0 },
  });
});
