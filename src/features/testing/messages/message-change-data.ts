import "server-only";
import { callScope, type CallAccess } from "@/features/calls/access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";
import type { MessageChange } from "./changed-message";
import type { ChangeableKind } from "./changeable-kinds";

export interface VersionedChange extends MessageChange {
  /** 0 where nothing was ever changed. */
  readonly version: number;
}

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
  const row = await connection.callMessage.findFirst({ where: { kind, call: { testers: { some: testers } } } });
  return row === null ? undefined : toChange(row);
}

interface ChangeRow {
  readonly isOff: boolean;
  readonly note: string;
  readonly subject: string | null;
  readonly text: string | null;
  readonly version: number;
}

export function toChange({ isOff, note, subject, text, version }: ChangeRow): VersionedChange {
  return { isOff, note, words: subject === null || text === null ? null : { subject, text }, version };
}
