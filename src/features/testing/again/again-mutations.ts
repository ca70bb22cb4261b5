import "server-only";
import { randomUUID } from "node:crypto";
import { patternOfPieces } from "@/engine/pattern";
import { callEditScope, callScope, type CallAccess } from "@/features/calls/access";
import { createCall, lockOpenCall, raiseCallVersion } from "@/features/calls/mutations";
import { latestRevision } from "@/features/patterns/data";
import { checkMostTesters, freeCodes } from "@/features/recruiting/invitations/mutations";
import { writeOffers } from "@/features/recruiting/invitations/offer-mail-mutations";
import type { TypedListing } from "@/features/recruiting/listing/schema";
import { AppError } from "@/server/errors";
import { inTransaction } from "@/server/transaction";
import { earlierTesters, notCarriedFrom } from "./again-data";

interface NextCall {
  readonly title: string;
  readonly typed: TypedListing;
  readonly idempotencyKey: string;
}

/**
 * Creates a call that follows this one, open or closed, with an unpublished listing; the same key again returns the call
 * that exists.
 *
 * @throws {AppError} "not-found" if the viewer may not edit.
 */
export async function startNextCall(
  access: CallAccess,
  { title, typed, idempotencyKey }: NextCall,
): Promise<{ callId: string }> {
  return await inTransaction(async (transaction) => {
    if ((await transaction.call.count({ where: callEditScope(access) })) === 0) throw new AppError("not-found");
    const made = await createCall(access.pattern, { title, places: {}, idempotencyKey }, transaction);
    const { callId, isNew } = made;
    if (!isNew) return { callId };
    const { document: pattern } = await latestRevision(access.pattern, transaction);
    const notCarried = await notCarriedFrom(access.pattern, callScope(access), { pattern, connection: transaction });
    const countsEarlier = notCarried.sizes.length + notCarried.measurements.length === 0;
    await transaction.call.update({ where: { id: callId }, data: { followsId: access.callId, countsEarlier } });
    await transaction.listing.create({ data: { callId, document: { typed } } });
    return { callId };
  });
}

/**
 * Whether the reports of the call that this one follows count in its results too; it is then analysed again.
 *
 * @throws {AppError} "not-found" if the viewer may not edit.
 */
export async function countEarlier(access: CallAccess, isCounted: boolean): Promise<void> {
  await inTransaction(async (transaction) => {
    const { count } = await transaction.call.updateMany({
      where: { AND: [callEditScope(access), { followsId: { not: null } }] },
      data: { countsEarlier: isCounted },
    });
    if (count === 0) throw new AppError("not-found");
    await raiseCallVersion(transaction, access.callId);
  });
}

/**
 * Chooses the pieces of the newest revision that the testers of a call make, with those that their stitches come from; all or none
 * of them for the whole garment.
 *
 * @throws {AppError} "closed"; "changed-meanwhile" where nothing could be measured on them.
 */
export async function storePieces(access: CallAccess, pieces: readonly string[]): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const { document } = await latestRevision(access.pattern, transaction);
    const tested = patternOfPieces(document, pieces);
    if (tested.measurements.length === 0)
      throw new AppError("changed-meanwhile", "No measurement is made of these pieces alone. Choose others, or more.");
    const chosen = tested === document ? [] : tested.garment.pieces.map(({ id }) => id);
    await transaction.call.update({ where: callEditScope(access), data: { pieces: chosen } });
  });
}

interface Again {
  readonly testerIds: readonly string[];
  /** The deadline for an answer. */
  readonly expiresAt: Date;
}

/**
 * Invites testers of the call that this one follows, each in the size that they made, with a copy of contact and body.
 * Those who are here already are skipped, so that sending twice invites once.
 *
 * @returns how many are newly invited.
 * @throws {AppError} "closed"; "no-place" if a size would have more testers than it may.
 */
export async function inviteAgain(access: CallAccess, { testerIds, expiresAt }: Again): Promise<number> {
  return await inTransaction(async (transaction) => {
    const { revisionId, document } = await latestRevision(access.pattern, transaction);
    await lockOpenCall(transaction, access);
    const chosen = new Set(testerIds);
    const people = (await earlierTesters(access, document, transaction)).filter(({ id }) => chosen.has(id));
    await checkMostTesters(transaction, { call: callEditScope(access), sizes: people.map(({ size }) => size) });
    const free = await freeCodes(transaction, access);
    const invited = people.map((person) => ({ ...person, newId: randomUUID() }));
    for (const { id: _id, newId, contact, body, reportedAt: _reportedAt, ...person } of invited) {
      await transaction.tester.create({
        data: {
          ...person,
          ...{ id: newId, callId: access.callId, revisionId, invitedAt: new Date(), invitationExpiresAt: expiresAt },
          ...free.next(),
          ...(contact ? { contact: { create: contact } } : {}),
          ...(body ? { body: { create: { measurements: body.measurements ?? {} } } } : {}),
        },
      });
    }
    const testers = { id: { in: invited.map(({ newId }) => newId) }, call: callEditScope(access) };
    await writeOffers(transaction, testers);
    return invited.length;
  });
}
