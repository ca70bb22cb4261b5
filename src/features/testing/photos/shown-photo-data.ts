import "server-only";
import type { CallAccess } from "@/features/calls/access";
import { patternScope } from "@/features/patterns/access";
import { publishedScope, type PublishedCall } from "@/features/recruiting/listing/access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import type { PhotoUse, PhotoView } from "./photo-views";

/** A tester's photo on the public page of a call of the pattern. */
export interface ShownPhoto {
  readonly photoId: string;
  readonly view: PhotoView;
  /** Id of the size that they made. */
  readonly size: string;
  /** How they wish to be named; "" for not at all. */
  readonly creditName: string;
}

const MOST_SHOWN = 24;

/** Whose photos may be shown: who allows it, now, and makes the garment for no child. */
const ALLOWS_SHOWING = {
  isWornByChild: false,
  photoConsents: { some: { use: "pattern_page" } },
} satisfies Prisma.TesterWhereInput;

/** Photos that the designer may choose to show, and of one that is ready the same in code. */
export const SHOWABLE = {
  state: "ready",
  view: { not: "problem" },
  tester: ALLOWS_SHOWING,
} satisfies Prisma.PhotoWhereInput;

interface ReadyPhoto {
  readonly view: PhotoView;
  readonly tester: { readonly isWornByChild: boolean; readonly photoConsents: readonly { readonly use: PhotoUse }[] };
}

export function isShowable({ view, tester: { isWornByChild, photoConsents } }: ReadyPhoto): boolean {
  return view !== "problem" && !isWornByChild && photoConsents.some(({ use }) => use === "pattern_page");
}

/** Where clause of testers' photos that the designer shows of a pattern. */
export function shownPhotos(pattern: Prisma.PatternWhereInput): Prisma.PhotoWhereInput {
  return { state: "ready", shownSince: { not: null }, tester: { ...ALLOWS_SHOWING, call: { pattern } } };
}

/** Testers' photos of a published call's pattern, of all its tests, as everybody sees them. */
export async function readShownPhotos(published: PublishedCall): Promise<ShownPhoto[]> {
  return await shown({ calls: { some: publishedScope(published) } });
}

/** The same for members of a call that is not published. */
export async function readPreviewedPhotos({ pattern }: CallAccess): Promise<ShownPhoto[]> {
  return await shown(patternScope(pattern));
}

async function shown(pattern: Prisma.PatternWhereInput): Promise<ShownPhoto[]> {
  const rows = await database().photo.findMany({
    where: shownPhotos(pattern),
    orderBy: [{ shownSince: "asc" }, { id: "asc" }],
    take: MOST_SHOWN,
    select: { id: true, view: true, tester: { select: { size: true, contact: { select: { creditName: true } } } } },
  });
  return rows.map(({ id, view, tester }) => ({
    ...{ photoId: id, view, size: tester?.size ?? "" },
    creditName: tester?.contact?.creditName ?? "",
  }));
}
