import "server-only";
import { LRUCache } from "lru-cache";
import { headers } from "next/headers";
import { after } from "next/server";
import type { CallAccess } from "@/features/calls/access";
import { Prisma, type ViewKind } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { log } from "@/server/log";

/** What of whom is shown. */
export interface Seen {
  readonly kind: ViewKind;
  /** Ids of testers of the call. */
  readonly testers?: readonly string[] | "all";
  /** Ids of applications to it. */
  readonly applications?: readonly string[] | "all";
}

/** What this process has noted: looking at a page again costs nothing. */
const noted = new LRUCache<string, true>({ max: 20_000 });

/**
 * Notes whose data a member of a call is shown, once the answer has been sent; people read it on their own page. A note
 * that fails is logged and fails nothing else.
 */
export async function noteSeen(access: CallAccess, seen: Seen): Promise<void> {
  // A page that is fetched in advance is not looked at.
  if ((await headers()).has("next-router-prefetch")) return;
  after(async () => {
    try {
      await recordSeen(access, seen);
    } catch (error) {
      log.error({ reason: error instanceof Error ? error.name : "unknown" }, "who looked could not be noted");
    }
  });
}

/** Writes it, once a viewer, person, kind and day. */
export async function recordSeen(access: CallAccess, seen: Seen, now = new Date()): Promise<void> {
  const { testers = [], applications = [] } = seen;
  await record(access, { table: TESTER, ids: testers, kind: seen.kind, now });
  await record(access, { table: APPLICATION, ids: applications, kind: seen.kind, now });
}

const TESTER = { rows: Prisma.sql`tester`, column: Prisma.sql`tester_id` };
const APPLICATION = { rows: Prisma.sql`application`, column: Prisma.sql`application_id` };

interface Noted {
  readonly table: typeof TESTER;
  readonly ids: readonly string[] | "all";
  readonly kind: ViewKind;
  readonly now: Date;
}

async function record({ callId, pattern }: CallAccess, { table, ids, kind, now }: Noted): Promise<void> {
  const [viewerId, day] = [pattern.accountId, now.toISOString().slice(0, "2027-03-14".length)];
  const keyOf = (id: string) => `${viewerId} ${kind} ${id} ${day}`;
  const fresh = ids === "all" ? null : [...new Set(ids)].filter((id) => !noted.has(keyOf(id)));
  if (fresh?.length === 0) return;
  const which = fresh === null ? Prisma.empty : Prisma.sql`AND id = ANY (${fresh}::uuid[])`;
  // What people look at of themselves is nobody else's doing.
  await database().$executeRaw`
    INSERT INTO data_view (viewer_id, ${table.column}, kind, day, seen_at)
    SELECT ${viewerId}::uuid, id, ${kind}::view_kind, ${day}::date, ${now}
    FROM ${table.rows}
    WHERE call_id = ${callId}::uuid AND account_id IS DISTINCT FROM ${viewerId}::uuid ${which}
    ON CONFLICT DO NOTHING`;
  for (const id of fresh ?? []) noted.set(keyOf(id), true);
}
