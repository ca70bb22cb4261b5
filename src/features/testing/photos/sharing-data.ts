import "server-only";
import type { PhotoSharing } from "@/features/recruiting/listing/photo-sharing-schema";
import { listingSchema } from "@/features/recruiting/listing/schema";
import { database } from "@/server/database";
import { testerScope, type TesterAccess } from "../home/access";

/** What a tester agreed to about showing photos. */
export interface AgreedSharing extends PhotoSharing {
  readonly isReleased: boolean;
  /** As planned; null where that is not known. */
  readonly releaseOn: string | null;
}

/** @returns null where they agreed to nothing about photos, as those who were invited by hand. */
export async function agreedSharing(access: TesterAccess): Promise<AgreedSharing | null> {
  const row = await database().tester.findUnique({ where: testerScope(access), select: AGREED });
  const agreed = row?.agreement ?? row?.application?.agreement;
  if (agreed == null || (agreed.progressPhotos === null && agreed.finishedPhotos === null)) return null;
  const { listing, pattern } = row?.call ?? {};
  const releaseOn = listing?.publishedAt == null ? undefined : listingSchema.parse(listing.document).releaseOn;
  return { ...agreed, isReleased: (pattern?._count.revisions ?? 0) > 0, releaseOn: releaseOn ?? null };
}

const SHARING = { select: { progressPhotos: true, finishedPhotos: true } } as const;

const AGREED = {
  agreement: SHARING,
  application: { select: { agreement: SHARING } },
  call: {
    select: {
      listing: { select: { document: true, publishedAt: true } },
      pattern: { select: { _count: { select: { revisions: { where: { published: { isNot: null } } } } } } },
    },
  },
} as const;
