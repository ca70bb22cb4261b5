import { Pool } from "pg";
import { expect, it } from "vitest";
import { database } from "@/server/database";
import { environment } from "@/server/environment";
import { changePlace, fillFreePlace, givePlaces } from "@/features/recruiting/places/mutations";
import { apply, invited, LATER, NOW, placesCall, send, standing } from "./places-call";

it("gives places and invites while every other connection is taken", async () => {
  // A pool that waited for itself would not answer: nobody gives its only connection back.
  globalThis.sizewrightPool = new Pool({
    connectionString: environment().DATABASE_URL,
    max: 1,
    connectionTimeoutMillis: 2_000,
  });
  globalThis.sizewrightDatabase = undefined;
  const call = await placesCall({ small: 1, medium: 1, large: 1 });
  const ana = await apply(call, "Ana", { bust: 90 });
  await apply(call, "Bea", { bust: 108 });
  await givePlaces(call.access, { considering: "yes", now: NOW });
  await changePlace(call.access, { applicationId: ana, change: { kind: "move", size: "small" } });
  expect(await standing(call)).toEqual({ "Ana (lock)": "small", Bea: "large" });
  expect(await send(call)).toBe(2);
  const cleo = await apply(call, "Cleo", { bust: 98 });
  const dates = { startOn: "2026-12-01", swatchBy: "2026-12-10", reportBy: "2027-01-20" };
  await fillFreePlace(call.access, { applicationId: cleo, size: "medium", expiresAt: LATER, dates, now: NOW });
  expect(await invited(call)).toEqual({ Ana: "small", Bea: "large", Cleo: "medium" });
  expect(await database().tester.count({ where: { callId: call.callId } })).toBe(3);
});
