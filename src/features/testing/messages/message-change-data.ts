import "server-only";
import { callScope, type CallAccess } from "@/features/calls/access";
import { messageChange, toChange, type VersionedChange } from "@/features/recruiting/own-words/own-words-data";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";
import type { MessageChange } from "@/features/recruiting/own-words/changed-message-computed";
import type { ChangeableKind } from "./changeable-kinds";

export { toChange, type VersionedChange };

export const UNCHANGED: VersionedChange = { isOff: false, note: "", words: null, version: 0 };

/** What the call's designers changed, by kind. */
export async function readMessageChanges(access: CallAccess): Promise<ReadonlyMap<string, VersionedChange>> {
  const rows = await database().callMessage.findMany({ where: { call: callScope(access) } });
  return new Map(rows.map((row) => [row.kind, toChange(row)]));
}

/** What is changed in a kind of mail to these testers, who are of one call. */
export async function changeFor(
  connection: Connection,
  { kind, testers }: { readonly kind: ChangeableKind; readonly testers: Prisma.TesterWhereInput },
): Promise<MessageChange | undefined> {
  return await messageChange(connection, { kind, call: { testers: { some: testers } } });
}
