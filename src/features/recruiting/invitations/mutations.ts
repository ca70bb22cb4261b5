import "server-only";
import { randomUUID } from "node:crypto";
import { applicationSchema } from "@/features/recruiting/applications/schema";
import { mostTesters } from "@/engine/places";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { lockOpenCall } from "@/features/calls/mutations";
import { takesPlace } from "@/features/calls/tester-status-data";
import type { TesterDates } from "@/features/recruiting/listing/schema";
import { latestRevision, newestDocument, storedPattern } from "@/features/patterns/data";
import type { Prisma } from "@/generated/prisma/client";
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
 * @throws {AppError} "closed" if the call is closed or the viewer may not edit it; "no-place" if a size would
 * have more testers than it may.
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

interface Coming {
  /** Where clause of the call, by the proof of whoever acts. */
  readonly call: Prisma.CallWhereInput;
  /** The size of each who would come. */
  readonly sizes: readonly string[];
  /** Sizes of others who count as testers though they are not invited yet. */
  readonly assigned?: readonly string[];
  /** Said in place of the designer's sentence. */
  readonly refusal?: string;
}

/**
 * The most testers that a designer has set for a size: nobody is moved, added, invited or let back in beyond it. A size
 * without numbers has no such limit.
 *
 * @param connection a transaction in which the call's row is locked.
 * @throws {AppError} "no-place" with the size and its number.
 */
export async function checkMostTesters(connection: Connection, coming: Coming): Promise<void> {
  const { call, sizes, assigned = [], refusal } = coming;
  const places = await connection.place.findMany({ where: { call, size: { in: [...sizes] } } });
  const testers = await connection.tester.findMany({
    where: { call, ...takesPlace(new Date()) },
    select: { size: true },
  });
  const count = (all: readonly string[], size: string) => all.filter((other) => other === size).length;
  const standing = [...testers.map(({ size }) => size), ...assigned];
  for (const { size, ...place } of places) {
    const [has, more, most] = [count(standing, size), count(sizes, size), mostTesters(place)];
    if (has + more <= most) continue;
    const label = await sizeLabel(connection, { call, size });
    throw new AppError("no-place", refusal ?? tooManyWords({ label, has, more, most }));
  }
}

async function sizeLabel(connection: Connection, { call, size }: Pick<Coming, "call"> & { size: string }) {
  const row = await connection.call.findFirst({
    where: call,
    select: { pattern: { select: { revisions: newestDocument } } },
  });
  const [revision] = row?.pattern.revisions ?? [];
  const sizes = revision === undefined ? [] : storedPattern(revision).sizes;
  return sizes.find(({ id }) => id === size)?.label ?? size;
}

function tooManyWords({ label, has, more, most }: { label: string; has: number; more: number; most: number }): string {
  const testers = has === 1 ? "1 tester" : `${has} testers`;
  if (most === 0) return `Size ${label} takes no testers: the most you set is 0.`;
  if (has === most) return `Size ${label} already has ${testers}, the most you set.`;
  if (has > most) return `Size ${label} already has ${testers}; the most you set is ${most}.`;
  return `Size ${label} would have ${has + more} testers; the most you set is ${most}.`;
}

/** The same for a designer. */
export async function checkPlaces(
  transaction: Connection,
  access: CallAccess,
  sizes: readonly string[],
): Promise<void> {
  await checkMostTesters(transaction, { call: callEditScope(access), sizes });
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
