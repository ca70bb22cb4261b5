import "server-only";
import { callScope, type CallAccess } from "@/features/calls/access";
import { toChange, type VersionedChange } from "@/features/recruiting/own-words/own-words-data";
import { database } from "@/server/database";

export const UNCHANGED: VersionedChange = { isOff: false, note: "", words: null, version: 0 };

/** What the call's designers changed, by kind. */
export async function readMessageChanges(access: CallAccess): Promise<ReadonlyMap<string, VersionedChange>> {
  const rows = await database().callMessage.findMany({ where: { call: callScope(access) } });
  return new Map(rows.map((row) => [row.kind, toChange(row)]));
}
