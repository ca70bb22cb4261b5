import type { Prisma } from "@/generated/prisma/client";
import type { PhotoView } from "./photo-views";

/** A photo as whoever sent it sees it. */
export interface OwnPhoto {
  readonly photoId: string;
  readonly view: PhotoView;
  /** What they wrote about it, or about the trouble spot that it shows; "" for nothing. */
  readonly note: string;
  readonly state: "received" | "ready" | "failed";
  /** Why it failed. */
  readonly reason: string | null;
}

export const OWN_PHOTO = {
  ...{ id: true, view: true, note: true, state: true, reason: true },
  trouble: { select: { happened: true } },
} satisfies Prisma.PhotoSelect;

export function toOwnPhoto({ id, trouble, ...photo }: Prisma.PhotoGetPayload<{ select: typeof OWN_PHOTO }>): OwnPhoto {
  return { photoId: id, ...photo, note: noteOf({ ...photo, trouble }) };
}

/** What a tester wrote about a photo: of its own, or of the trouble spot that it shows. */
export function noteOf({ note, trouble }: { readonly note: string; readonly trouble: { happened: string } | null }) {
  return note === "" ? (trouble?.happened ?? "") : note;
}
