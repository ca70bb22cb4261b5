import "server-only";
import type { Places } from "@/engine/pattern";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";
import { callScopeSql, type CallAccess } from "./access";
import { placesBySize, type PlaceRow } from "./places-computed";

/** Tester spots by size, as in the tester call. */
export async function callPlaces(access: CallAccess, connection: Connection = database()): Promise<Places> {
  const rows = await connection.$queryRaw<PlaceRow[]>`
    SELECT size, least, wanted, most FROM place
    WHERE call_id = ${access.callId}::uuid AND ${callScopeSql(access)}`;
  return placesBySize(rows);
}
