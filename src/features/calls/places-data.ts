import "server-only";
import type { Places } from "@/engine/pattern";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";
import type { CallAccess } from "./access";
import { placesBySize, type PlaceRow } from "./places-computed";

/** Tester spots by size, as in the tester call. */
export async function callPlaces(
  { callId, pattern }: CallAccess,
  connection: Connection = database(),
): Promise<Places> {
  const rows = await connection.$queryRaw<PlaceRow[]>`
    SELECT size, least, wanted, most FROM place
    WHERE call_id = ${callId}::uuid AND EXISTS (
      SELECT FROM call JOIN membership USING (pattern_id)
      WHERE call.id = ${callId}::uuid AND account_id = ${pattern.accountId}::uuid)`;
  return placesBySize(rows);
}
