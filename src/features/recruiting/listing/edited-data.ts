import "server-only";
import { placesBySize } from "@/features/calls/places-computed";
import { callScope, type CallAccess } from "@/features/calls/access";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { listingSelect, ownerOf, patternOwnerSelect, toListing, type Agreement } from "./data";
import { listingDraftSchema, type TypedListing } from "./schema";
import { typedListing } from "./typed-listing";

/** A listing as the designer's form has it. */
export interface EditedListing {
  readonly version: number;
  /** Null while it is a draft. */
  readonly publishedAt: Date | null;
  /** The form's fields: as typed, or as published. */
  readonly typed: TypedListing;
}

/** The listing of a call of the viewer's as its form has it. @returns null if the call has none. */
export async function editedListing(access: CallAccess): Promise<EditedListing | null> {
  const row = await database().call.findUnique({
    where: callScope(access),
    select: { title: true, places: true, listing: { select: listingSelect } },
  });
  if (row === null) throw new AppError("not-found");
  if (row.listing === null) return null;
  const { version, publishedAt, document } = row.listing;
  if (publishedAt === null) return { version, publishedAt, typed: listingDraftSchema.parse(document).typed };
  const published = toListing(row.listing);
  const places = placesBySize(row.places);
  const agreement = published.document.agreementText ?? published.agreement.text;
  const typed = typedListing({ ...published, title: row.title, places, agreement });
  return { version, publishedAt, typed };
}

/** A version of a call's agreement, and who agreed to it. */
export interface BindingAgreement extends Agreement {
  readonly createdAt: Date;
  /** Names of those who agreed to it and have not withdrawn; null for a deleted name. */
  readonly binds: readonly (string | null)[];
  /** How many agreed to it; only the first are named. */
  readonly many: number;
}

/** Of more whom a version binds, only how many. */
const MAX_NAMED = 12;

/** All versions of a call's agreement, the newest first. */
export async function agreements(access: CallAccess): Promise<BindingAgreement[]> {
  const rows = await database().agreement.findMany({
    where: { call: callScope(access) },
    orderBy: { version: "desc" },
    select: {
      version: true,
      text: true,
      createdAt: true,
      _count: { select: { applications: { where: { withdrawnAt: null } }, testers: true } },
      testers: { orderBy: { position: "asc" }, take: MAX_NAMED, select: { contact: { select: { name: true } } } },
      applications: {
        where: { withdrawnAt: null },
        orderBy: { position: "asc" },
        take: MAX_NAMED,
        select: { contact: { select: { name: true } } },
      },
    },
  });
  return rows.map(({ applications, testers, _count, ...row }) => ({
    ...row,
    many: _count.applications + _count.testers,
    binds: [...applications, ...testers].slice(0, MAX_NAMED).map(({ contact }) => contact?.name ?? null),
  }));
}

/** The unpublished listing of a call, for its members. @throws {AppError} "not-found" if it has none. */
export async function previewedCall(
  access: CallAccess,
): Promise<{ title: string; designer: string; isDemo: boolean; pieces: readonly string[]; typed: TypedListing }> {
  const row = await database().call.findUnique({
    where: { ...callScope(access), listing: { publishedAt: null } },
    select: {
      ...{ title: true, pieces: true },
      listing: { select: { document: true } },
      pattern: { select: patternOwnerSelect },
    },
  });
  if (row?.listing == null) throw new AppError("not-found");
  const { typed } = listingDraftSchema.parse(row.listing.document);
  return { title: row.title, pieces: row.pieces, ...ownerOf(row.pattern), typed };
}
