import "server-only";
import type { Places } from "@/engine/pattern";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";
import { callScope, type CallAccess } from "./access";
import { placesBySize } from "./places-computed";

/** Tester spots by size, as in the tester call. */
export async function callPlaces(access: CallAccess, connection: Connection = database()): Promise<Places> {
  return placesBySize(await connection.place.findMany({ where: { call: callScope(access) } }));
}
