import "server-only";
import { randomUUID } from "node:crypto";
import { applicationSchema } from "@/features/recruiting/applications/schema";
import { ownValue, type Places } from "@/engine/pattern";
import { mostTesters } from "@/engine/places";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { lockOpenCall } from "@/features/calls/mutations";
import { takesPlace } from "@/features/calls/tester-status-data";
import { placesBySize } from "@/features/calls/places-computed";
import type { TesterDates } from "@/features/recruiting/listing/schema";
import { latestRevision, newestDocument, storedPattern } from "@/features/patterns/data";
import type { Prisma } from "@/generated/prisma/client";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { writeOffers } from "./offer-mail-mutations";

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
    await checkMostTesters(transaction, { call: callEditScope(access), sizes: invited.map(({ size }) => size) });
    const free = await freeCodes(transaction, access);
    const ids = invited.map(() => randomUUID());
    for (const [index, { application, size }] of invited.entries()) {
      const { unit, terms, timeZone, wearer } = applicationSchema.parse(application.document);
      const { contact, body } = application;
      await transaction.tester.create({
        data: {
          id: ids[index],
          ...{ callId: access.callId, revisionId, applicationId: application.id, accountId: application.accountId },
          ...{ size, unit, terms, timeZone, invitedAt: new Date(), invitationExpiresAt: expiresAt },
          isWornByChild: wearer === "child",
          ...free.next(),
          ...(dates ? { dates } : {}),
          ...(contact ? { contact: { create: { name: contact.name, email: contact.email } } } : {}),
          ...(body ? { body: { create: { measurements: body.measurements ?? {} } } } : {}),
        },
      });
    }
    const testers = { id: { in: ids }, call: callEditScope(access) };
    await writeOffers(transaction, testers);
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

/** The sizes of a call's testers, and what its designer has set for each size. */
interface SizesTaken {
  readonly places: Places;
  readonly testers: readonly string[];
}

/** @param connection a transaction in which the call's row is locked. */
export async function sizesTaken(connection: Connection, call: Prisma.CallWhereInput): Promise<SizesTaken> {
  const places = await connection.place.findMany({ where: { call } });
  const testers = await connection.tester.findMany({
    where: { call, ...takesPlace(new Date()) },
    select: { size: true },
  });
  return { places: placesBySize(places), testers: testers.map(({ size }) => size) };
}

/** A size with the testers that it has, those who would come, and the most that it may have. */
interface TooMany {
  readonly size: string;
  readonly has: number;
  readonly more: number;
  readonly most: number;
}

/**
 * The most testers that a designer has set for a size: nobody is moved, added, invited or let back in beyond it. A size
 * without numbers has no such limit.
 *
 * @returns the first size that would have too many; null where none would.
 */
export function tooManyTesters(
  { places, testers }: SizesTaken,
  { sizes, assigned = [] }: Pick<Coming, "sizes" | "assigned">,
): TooMany | null {
  const count = (all: readonly string[], size: string) => all.filter((other) => other === size).length;
  for (const size of new Set(sizes)) {
    const place = ownValue(places, size);
    if (place === undefined) continue;
    const [has, more, most] = [count([...testers, ...assigned], size), count(sizes, size), mostTesters(place)];
    if (has + more > most) return { size, has, more, most };
  }
  return null;
}

/**
 * Refuses who would be one too many, by `tooManyTesters`.
 *
 * @param connection a transaction in which the call's row is locked.
 * @throws {AppError} "no-place" with the size and its number.
 */
export async function checkMostTesters(connection: Connection, { call, refusal, ...coming }: Coming): Promise<void> {
  const found = tooManyTesters(await sizesTaken(connection, call), coming);
  if (found === null) return;
  const { size } = found;
  throw new AppError("no-place", refusal ?? tooManyWords(await sizeLabel(connection, { call, size }), found));
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

/** @param label the size's. */
export function tooManyWords(label: string, { has, more, most }: TooMany): string {
  const testers = has === 1 ? "1 tester" : `${has} testers`;
  if (most === 0) return `Size ${label} takes no testers: the most you set is 0.`;
  if (has === most) return `Size ${label} already has ${testers}, the most you set.`;
  if (has > most) return `Size ${label} already has ${testers}; the most you set is ${most}.`;
  return `Size ${label} would have ${has + more} testers; the most you set is ${most}.`;
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
