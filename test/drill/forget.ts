import { setTimeout as pause } from "node:timers/promises";
import { deleteAccount } from "@/features/testing/account-data/delete-account-mutations";
import { forgetTester } from "@/features/testing/home/forget-mutations";
import { database, pool } from "@/server/database";
import { filesIn, tracesInTables, type Trace } from "./find-traces";
import { makeMarkedPerson } from "./marked-person";
import type { Searched } from "./searched";

interface Places {
  readonly marker: string;
  /** Where the photo store is; left out: it is not looked at. */
  readonly photos?: string;
  readonly waitMs: number;
}

/** Marks two people, one with an account and one without, deletes them as they would, and searches before and after. */
export async function playForget({ marker, photos, waitMs }: Places): Promise<Searched[]> {
  const byLink = await makeMarkedPerson(marker, { withAccount: false });
  const byAccount = await makeMarkedPerson(marker, { withAccount: true });
  const search = async () => [
    ...(await tracesInTables(pool(), marker)),
    ...(photos === undefined ? [] : [await filesIn("files of their photos", photos)]),
  ];
  await until(async () => (await database().message.count({ where: { attempts: 0 } })) === 0, waitMs);
  await until(async () => (await database().photo.count({ where: { state: "received" } })) === 0, waitMs);
  const before = await search();
  await forgetTester(byLink.access);
  if (byAccount.viewer !== null) await deleteAccount(byAccount.viewer);
  await until(async () => (await database().deletedPhoto.count()) === 0, waitMs);
  const after = await search();
  return before.map(({ place, found }) => ({ place, before: found, after: foundAt(after, place) }));
}

function foundAt(traces: readonly Trace[], place: string): number {
  return traces.find((trace) => trace.place === place)?.found ?? 0;
}

/** Waits for the worker; where none runs, not at all. */
async function until(isDone: () => Promise<boolean>, waitMs: number): Promise<void> {
  const end = Date.now() + waitMs;
  while (Date.now() < end && !(await isDone())) await pause(200);
}
