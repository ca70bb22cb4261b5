import "server-only";
import { canonicalJson, type Places } from "@/engine/pattern";
import { mostTesters } from "@/engine/places";
import { callEditScope, openCallEditScope, type CallAccess } from "@/features/calls/access";
import { createCall, lockOpenCall, placeRows } from "@/features/calls/mutations";
import type { PatternAccess } from "@/features/patterns/access";
import { takesPlace } from "@/features/calls/tester-status-data";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { editedListing } from "./edited-data";
import { mostField, NOTICE_FIELDS } from "./field-names";
import { wholeAgreement } from "./photo-sharing-schema";
import type { FieldFault } from "./read-typed";
import { listingSchema, type NoticeFacts, type TypedListing } from "./schema";
import { typedListing } from "./typed-listing";
import type { CompleteListing } from "./complete-listing";

/** Creates a call with an unpublished listing; the same key again returns the call that exists. */
export async function startCall(
  access: PatternAccess,
  { title, typed, idempotencyKey }: { title: string; typed: TypedListing; idempotencyKey: string },
): Promise<{ callId: string }> {
  return await inTransaction(async (transaction) => {
    const { callId, isNew } = await createCall(access, { title, places: {}, idempotencyKey }, transaction);
    if (isNew) await transaction.listing.create({ data: { callId, document: { typed } } });
    return { callId };
  });
}

/** Creates a listing for an imported call; an existing one stays. @throws {AppError} "closed". */
export async function createListing(access: CallAccess, typed: TypedListing): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    await transaction.listing.createMany({
      data: [{ callId: access.callId, document: { typed } }],
      skipDuplicates: true,
    });
  });
}

export type ListingSave =
  | { readonly status: "saved"; readonly version: number }
  /** Somebody else saved first: their version stays, the viewer's is still in their form. */
  | { readonly status: "conflict" };

/**
 * Saves an unpublished listing as typed, if its version is still the one that was read.
 *
 * @param title the call's new title; null leaves it as it is.
 */
export async function saveTypedListing(
  access: CallAccess,
  { version, typed, title }: { version: number; typed: TypedListing; title: string | null },
): Promise<ListingSave> {
  const isSaved = await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const { count } = await transaction.listing.updateMany({
      where: { version, publishedAt: null, call: openCallEditScope(access) },
      data: { document: { typed }, version: { increment: 1 } },
    });
    if (count === 1 && title !== null)
      await transaction.call.update({ where: openCallEditScope(access), data: { title } });
    return count === 1;
  });
  return isSaved ? { status: "saved", version: version + 1 } : await conflictUnlessSame(access, typed);
}

export type Publishing = ListingSave | { readonly status: "refused"; readonly faults: readonly FieldFault[] };

/**
 * Publishes a listing, or changes the published one. A different agreement is stored as the next version; earlier ones
 * stay, because they bind those who agreed to them.
 *
 * @returns "refused" if a size already has more testers than it could have, or people were told that what is about them
 * is deleted earlier.
 */
export async function publishListing(
  access: CallAccess,
  { version, listing }: { version: number; listing: CompleteListing },
): Promise<Publishing> {
  const { title, document, applyUntil } = listing;
  const saved = await inTransaction(async (transaction): Promise<Publishing> => {
    await lockOpenCall(transaction, access);
    const faults = [
      ...(await tooManyTesters(transaction, access, listing.places)),
      ...(await storedLonger(transaction, access, document.notice)),
    ];
    if (faults.length > 0) return { status: "refused", faults };
    const { callId } = access;
    const { count } = await transaction.listing.updateMany({
      where: { version, call: openCallEditScope(access) },
      data: { document, applyUntil, version: { increment: 1 } },
    });
    if (count === 0) return { status: "conflict" };
    await transaction.listing.updateMany({ where: { callId, publishedAt: null }, data: { publishedAt: new Date() } });
    await storeAgreement(transaction, access, listing);
    await transaction.place.deleteMany({ where: { call: openCallEditScope(access) } });
    await transaction.place.createMany({ data: placeRows(callId, listing.places) });
    await transaction.call.update({ where: openCallEditScope(access), data: { title } });
    return { status: "saved", version: version + 1 };
  });
  return saved.status === "conflict" ? await conflictUnlessSame(access, typedListing(listing)) : saved;
}

/** Unpublishes a listing, while nobody has applied or been invited. */
export async function unpublishListing(
  access: CallAccess,
  { version, typed }: { version: number; typed: TypedListing },
): Promise<ListingSave | { readonly status: "applied" }> {
  return await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const call = callEditScope(access);
    const applications = await transaction.application.count({ where: { call } });
    const invited = await transaction.tester.count({ where: { call, invitedAt: { not: null } } });
    if (applications + invited > 0) return { status: "applied" };
    const { count } = await transaction.listing.updateMany({
      where: { version, publishedAt: { not: null }, call },
      data: { document: { typed }, publishedAt: null, applyUntil: null, version: { increment: 1 } },
    });
    return count === 0 ? { status: "conflict" } : { status: "saved", version: version + 1 };
  });
}

/** A save whose answer was lost is sent again: then the same text is already stored. */
async function conflictUnlessSame(access: CallAccess, typed: TypedListing): Promise<ListingSave> {
  const theirs = await editedListing(access);
  if (theirs === null) throw new AppError("not-found");
  return canonicalJson(theirs.typed) === canonicalJson(typed)
    ? { status: "saved", version: theirs.version }
    : { status: "conflict" };
}

async function tooManyTesters(transaction: Connection, access: CallAccess, places: Places): Promise<FieldFault[]> {
  const occupied = await transaction.tester.groupBy({
    by: ["size"],
    where: { call: callEditScope(access), ...takesPlace(new Date()) },
    _count: true,
  });
  return occupied.flatMap(({ size, _count: testers }) => {
    const place = places[size];
    if (place === undefined || mostTesters(place) >= testers) return [];
    const message = `This size already has ${testers === 1 ? "1 tester" : `${testers} testers`}. Enter ${testers} or more.`;
    return [{ field: mostField(size), message, isMissing: false }];
  });
}

/** Nobody's data is stored for longer than they were told when they applied or were invited. */
async function storedLonger(
  transaction: Connection,
  access: CallAccess,
  notice: NoticeFacts | undefined,
): Promise<FieldFault[]> {
  const call = callEditScope(access);
  const row = await transaction.listing.findFirst({
    where: { publishedAt: { not: null }, call },
    select: { document: true },
  });
  const told = row === null ? undefined : listingSchema.parse(row.document).notice;
  if (told === undefined || notice === undefined || notice.monthsStored <= told.monthsStored) return [];
  const people =
    (await transaction.application.count({ where: { call } })) + (await transaction.tester.count({ where: { call } }));
  if (people === 0) return [];
  const { monthsStored: months } = told;
  const message = `People who take part were told ${months === 1 ? "1 month" : `${months} months`}. You can choose a shorter time, not a longer one.`;
  return [{ field: NOTICE_FIELDS.monthsStored, message, isMissing: false }];
}

async function storeAgreement(
  transaction: Connection,
  access: CallAccess,
  { agreement, sharing }: Pick<CompleteListing, "agreement" | "sharing">,
): Promise<void> {
  const text = wholeAgreement(agreement, sharing);
  const newest = await transaction.agreement.findFirst({
    where: { call: callEditScope(access) },
    orderBy: { version: "desc" },
    select: { version: true, text: true },
  });
  if (newest?.text === text) return;
  const version = (newest?.version ?? 0) + 1;
  await transaction.agreement.create({ data: { callId: access.callId, version, text, ...sharing } });
}
