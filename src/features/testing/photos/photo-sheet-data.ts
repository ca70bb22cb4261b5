import "server-only";
import { callScope, type CallAccess } from "@/features/calls/access";
import { database } from "@/server/database";
import { noteOf } from "./own-photo-data";
import type { PhotoUse, PhotoView } from "./photo-views";
import { isShowable } from "./shown-photo-data";

export interface SheetPhoto {
  readonly photoId: string;
  readonly testerId: string;
  readonly name: string;
  /** How they would like to be named: "" for not at all, null until they have said. */
  readonly creditName: string | null;
  /** Id of the size that they make. */
  readonly size: string;
  readonly view: PhotoView;
  readonly note: string;
  readonly allowed: readonly PhotoUse[];
  /** Whether the designer shows it on the pattern's page; null where they may not. */
  readonly isShown: boolean | null;
}

/** Every photo of a call's testers, or of those who make one size, that is ready, testers in the call's order. */
export async function readSheetPhotos(access: CallAccess, size?: string): Promise<SheetPhoto[]> {
  const ofSize = size === undefined ? {} : { size };
  const rows = await database().photo.findMany({
    where: { state: "ready", tester: { ...ofSize, call: callScope(access) } },
    orderBy: [{ tester: { position: "asc" } }, { createdAt: "asc" }, { id: "asc" }],
    select: {
      ...{ id: true, view: true, note: true, shownSince: true, trouble: { select: { happened: true } } },
      tester: {
        select: {
          ...{ id: true, code: true, size: true, isWornByChild: true },
          contact: { select: { name: true, creditName: true } },
          photoConsents: { select: { use: true }, orderBy: { use: "asc" } },
        },
      },
    },
  });
  return rows.flatMap(({ id, view, note, trouble, shownSince, tester }) => {
    if (tester === null) return [];
    const { code, contact, photoConsents } = tester;
    return {
      ...{ photoId: id, view, note: noteOf({ note, trouble }), testerId: tester.id, size: tester.size },
      ...{ name: contact?.name ?? code, creditName: contact?.creditName ?? null },
      allowed: photoConsents.map(({ use }) => use),
      isShown: isShowable({ view, tester }) ? shownSince !== null : null,
    };
  });
}

export interface Withdrawal {
  readonly withdrawalId: string;
  /** Null where nothing of the tester is stored any more. */
  readonly name: string | null;
  readonly use: PhotoUse;
  /** Of the one photo that they deleted; null where all their photos are meant. */
  readonly view: PhotoView | null;
}

/** What testers no longer allow, and the designer has not yet taken down. */
export async function openWithdrawals(access: CallAccess): Promise<Withdrawal[]> {
  const rows = await database().photoWithdrawal.findMany({
    where: open(access),
    orderBy: [{ withdrawnAt: "asc" }, { id: "asc" }],
    select: {
      id: true,
      use: true,
      view: true,
      tester: { select: { code: true, contact: { select: { name: true } } } },
    },
  });
  return rows.map(({ id, use, view, tester }) => ({
    ...{ withdrawalId: id, use, view },
    name: tester === null ? null : (tester.contact?.name ?? tester.code),
  }));
}

export async function countWithdrawals(access: CallAccess): Promise<number> {
  return await database().photoWithdrawal.count({ where: open(access) });
}

function open(access: CallAccess) {
  return { call: callScope(access), doneAt: null };
}
