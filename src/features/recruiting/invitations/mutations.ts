import "server-only";
import { randomUUID } from "node:crypto";
import { applicationSchema } from "@/features/recruiting/applications/schema";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { lockOpenCall } from "@/features/calls/mutations";
import { takesPlace } from "@/features/calls/tester-status-data";
import type { TesterDates } from "@/features/recruiting/listing/schema";
import { latestRevision } from "@/features/patterns/data";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";

interface NewInvitation {
  readonly applicationId: string;
  readonly size: string;
}

interface Invitations {
  readonly invitations: readonly NewInvitation[];
  /** The deadline for an answer. */
  readonly expiresAt: Date;
  /** Their own dates, for testers who join later than the others. */
  readonly dates?: TesterDates;
}

/**
 * Invites applicants to sizes, all of them or none. From then on each has a row as a tester, with a copy of contact
 * and body; those already invited are skipped, so that sending twice invites once.
 *
 * @param connection a transaction that it is part of.
 * @returns how many are newly invited.
 * @throws {AppError} "closed" if the call is closed or the viewer may not edit it; "no-place" if a size has no spot
 * left for all of them.
 */
export async function inviteApplicants(
  access: CallAccess,
  { invitations, expiresAt, dates }: Invitations,
  connection?: Connection,
): Promise<number> {
  return await inTransaction(async (transaction) => {
    const { revisionId } = await latestRevision(access.pattern, transaction);
    await lockOpenCall(transaction, access);
    const wishes = new Map(invitations.map(({ applicationId, size }) => [applicationId, size]));
    const applications = await transaction.application.findMany({
      where: { id: { in: [...wishes.keys()] }, withdrawnAt: null, tester: null, call: callEditScope(access) },
      orderBy: { position: "asc" },
      include: { contact: true, body: true },
    });
    const invited = applications.map((application) => ({ application, size: wishes.get(application.id) ?? "" }));
    await checkPlaces(
      transaction,
      access,
      invited.map(({ size }) => size),
    );
    const free = await freeCodes(transaction, access);
    for (const { application, size } of invited) {
      const { unit, terms, timeZone } = applicationSchema.parse(application.document);
      const { contact, body } = application;
      await transaction.tester.create({
        data: {
          id: randomUUID(),
          ...{ callId: access.callId, revisionId, applicationId: application.id, accountId: application.accountId },
          ...{ size, unit, terms, timeZone, invitedAt: new Date(), invitationExpiresAt: expiresAt },
          ...free.next(),
          ...(dates ? { dates } : {}),
          ...(contact ? { contact: { create: { name: contact.name, email: contact.email } } } : {}),
          ...(body ? { body: { create: { measurements: body.measurements ?? {} } } } : {}),
        },
      });
    }
    return invited.length;
  }, connection);
}

/** @throws {AppError} "no-place" if a size does not have enough open spots. */
export async function checkPlaces(
  transaction: Connection,
  access: CallAccess,
  sizes: readonly string[],
): Promise<void> {
  const call = callEditScope(access);
  const places = await transaction.place.findMany({ where: { call } });
  const taken = await transaction.tester.findMany({
    where: { call, ...takesPlace(new Date()) },
    select: { size: true },
  });
  const wanted = new Map(places.map(({ size, wanted: capacity }) => [size, capacity]));
  for (const size of new Set(sizes)) {
    const asked = sizes.filter((other) => other === size).length;
    const standing = taken.filter((tester) => tester.size === size).length;
    if (standing + asked > (wanted.get(size) ?? 0)) throw new AppError("no-place");
  }
}

/** Codes (ids in documents) and positions in the call's list that no tester has yet. */
export async function freeCodes(transaction: Connection, access: CallAccess) {
  const testers = await transaction.tester.findMany({
    where: { call: callEditScope(access) },
    select: { code: true, position: true },
  });
  const codes = new Set(testers.map(({ code }) => code));
  let position = testers.reduce((most, tester) => Math.max(most, tester.position), -1);
  return {
    next: () => {
      position += 1;
      let number = position + 1;
      while (codes.has(`tester-${number}`)) number += 1;
      codes.add(`tester-${number}`);
      return { code: `tester-${number}`, position };
    },
  };
}
