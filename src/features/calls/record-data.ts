import "server-only";
import { testerRecord } from "@/engine/gaps";
import { shownHabitsSchema, type TesterRecord } from "@/engine/pattern";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";
import { callScope, type CallAccess } from "./access";
import { KNOWN } from "./prior-data";

/** What testers' own earlier tests showed of their tapes and garments, by their id in documents; those without are left out. */
export async function testerRecords(
  access: CallAccess,
  connection: Connection = database(),
): Promise<Readonly<Record<string, TesterRecord>>> {
  const rows = await connection.tester.findMany({
    where: { call: callScope(access), ...KNOWN },
    orderBy: { position: "asc" },
    select: { code: true, habits: { select: { shown: true } } },
  });
  return Object.fromEntries(
    rows.flatMap(({ code, habits }) => {
      const record = testerRecord(habits.map(({ shown }) => shownHabitsSchema.parse(shown)));
      return record === null ? [] : [[code, record] as const];
    }),
  );
}
