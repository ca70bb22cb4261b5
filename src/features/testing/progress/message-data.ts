import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { database } from "@/server/database";

/** Somebody whom a message goes to. */
export interface Recipient {
  readonly name: string;
  /** Null where they gave none. */
  readonly email: string | null;
}

/** Names and addresses of testers of the call, in its order; ids of others, and of those who deleted their data, are skipped. */
export async function readRecipients(access: CallAccess, testerIds: readonly string[]): Promise<Recipient[]> {
  const rows = await database().tester.findMany({
    where: { id: { in: [...testerIds] }, call: callEditScope(access), contact: { isNot: null } },
    orderBy: { position: "asc" },
    select: { code: true, contact: { select: { name: true, email: true } } },
  });
  return rows.map(({ code, contact }) => ({ name: contact?.name ?? code, email: contact?.email ?? null }));
}
