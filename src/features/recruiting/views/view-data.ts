import "server-only";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";

export type ViewKind = Prisma.DataViewGetPayload<object>["kind"];

/** That somebody looked at what is about a person. */
export interface DataView {
  /** Null where their account has been deleted since. */
  readonly viewer: string | null;
  readonly kind: ViewKind;
  readonly seenAt: Date;
}

/**
 * Who looked at a person's data, the newest first.
 *
 * @param where whose, by the proof of whoever asks.
 */
export async function dataViews(where: Prisma.DataViewWhereInput): Promise<DataView[]> {
  const rows = await database().dataView.findMany({
    where,
    orderBy: [{ seenAt: "desc" }, { id: "asc" }],
    select: { kind: true, seenAt: true, viewer: { select: { name: true } } },
  });
  return rows.map(({ viewer, ...view }) => ({ ...view, viewer: viewer?.name ?? null }));
}
