import "server-only";
import { canonicalJson, type Places } from "@/engine/pattern";
import { callEditScope, openCallEditScope, type CallAccess } from "@/features/calls/access";
import { createCall, lockOpenCall } from "@/features/calls/mutations";
import type { PatternAccess } from "@/features/patterns/access";
import { takesPlace } from "@/features/testers/mutations";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { editedOpening } from "./edited-data";
import { wantedField } from "./field-names";
import type { FieldFault } from "./read-typed";
import type { TypedOpening } from "./schema";
import { typedOpening } from "./typed-opening";
import type { WholeOpening } from "./whole-opening";

/** A new call of a pattern with an opening that nobody sees yet; or the one that the same sending has made. */
export async function openCall(
  access: PatternAccess,
  { title, typed, submissionKey }: { title: string; typed: TypedOpening; submissionKey: string },
): Promise<{ callId: string }> {
  return await inTransaction(async (transaction) => {
    const { callId, isNew } = await createCall(access, { title, places: {}, submissionKey }, transaction);
    if (isNew) await transaction.opening.create({ data: { callId, document: { typed } } });
    return { callId };
  });
}

/** An opening for a call that was brought in without one; one that is there stays. @throws {AppError} "closed". */
export async function beginOpening(access: CallAccess, typed: TypedOpening): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    await transaction.opening.createMany({
      data: [{ callId: access.callId, document: { typed } }],
      skipDuplicates: true,
    });
  });
}

export type OpeningSave =
  | { readonly status: "saved"; readonly version: number }
  /** Somebody's save came first: theirs stands, hers is still with her. */
  | { readonly status: "late" };

/**
 * Keeps an opening that is not published as it was typed, over the version that was read.
 *
 * @param title the call's title from now on; null leaves it as it is.
 */
export async function keepOpening(
  access: CallAccess,
  { version, typed, title }: { version: number; typed: TypedOpening; title: string | null },
): Promise<OpeningSave> {
  const isKept = await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const { count } = await transaction.opening.updateMany({
      where: { version, publishedAt: null, call: openCallEditScope(access) },
      data: { document: { typed }, version: { increment: 1 } },
    });
    if (count === 1 && title !== null)
      await transaction.call.update({ where: openCallEditScope(access), data: { title } });
    return count === 1;
  });
  return isKept ? { status: "saved", version: version + 1 } : await lateUnlessSame(access, typed);
}

export type Publishing = OpeningSave | { readonly status: "refused"; readonly faults: readonly FieldFault[] };

/**
 * Publishes an opening, or changes what is published. An agreement of another text is the next version; earlier ones
 * stay, for they bind whoever agreed to them.
 *
 * @returns "refused" where a size would have fewer spots than it has testers.
 */
export async function publishOpening(
  access: CallAccess,
  { version, opening }: { version: number; opening: WholeOpening },
): Promise<Publishing> {
  const { title, document, applyUntil } = opening;
  const saved = await inTransaction(async (transaction): Promise<Publishing> => {
    await lockOpenCall(transaction, access);
    const faults = await tooFewSpots(transaction, access, opening.places);
    if (faults.length > 0) return { status: "refused", faults };
    const { callId } = access;
    const { count } = await transaction.opening.updateMany({
      where: { version, call: openCallEditScope(access) },
      data: { document, applyUntil, version: { increment: 1 } },
    });
    if (count === 0) return { status: "late" };
    await transaction.opening.updateMany({ where: { callId, publishedAt: null }, data: { publishedAt: new Date() } });
    await agree(transaction, access, opening.agreement);
    await transaction.place.deleteMany({ where: { call: openCallEditScope(access) } });
    await transaction.place.createMany({
      data: Object.entries(opening.places).map(([size, place]) => ({ callId, size, ...place })),
    });
    await transaction.call.update({ where: openCallEditScope(access), data: { title } });
    return { status: "saved", version: version + 1 };
  });
  return saved.status === "late" ? await lateUnlessSame(access, typedOpening(opening)) : saved;
}

/** Makes a published opening one that nobody sees, while nobody has applied or been invited. */
export async function takeBackOpening(
  access: CallAccess,
  { version, typed }: { version: number; typed: TypedOpening },
): Promise<OpeningSave | { readonly status: "applied" }> {
  return await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const call = callEditScope(access);
    const applications = await transaction.application.count({ where: { call } });
    const invited = await transaction.tester.count({ where: { call, invitedAt: { not: null } } });
    if (applications + invited > 0) return { status: "applied" };
    const { count } = await transaction.opening.updateMany({
      where: { version, publishedAt: { not: null }, call },
      data: { document: { typed }, publishedAt: null, applyUntil: null, version: { increment: 1 } },
    });
    return count === 0 ? { status: "late" } : { status: "saved", version: version + 1 };
  });
}

/** A save whose answer was lost comes again: what it says stands already. */
async function lateUnlessSame(access: CallAccess, typed: TypedOpening): Promise<OpeningSave> {
  const theirs = await editedOpening(access);
  if (theirs === null) throw new AppError("not-found");
  return canonicalJson(theirs.typed) === canonicalJson(typed)
    ? { status: "saved", version: theirs.version }
    : { status: "late" };
}

async function tooFewSpots(transaction: Connection, access: CallAccess, places: Places): Promise<FieldFault[]> {
  const standing = await transaction.tester.groupBy({
    by: ["size"],
    where: { call: callEditScope(access), ...takesPlace(new Date()) },
    _count: true,
  });
  return standing.flatMap(({ size, _count: testers }) => {
    const place = places[size];
    if (place === undefined || place.wanted >= testers) return [];
    const says = `${testers === 1 ? "1 tester stands" : `${testers} testers stand`} in this size, so give ${testers} or more.`;
    return [{ field: wantedField(size), says, isMissing: false }];
  });
}

async function agree(transaction: Connection, access: CallAccess, text: string): Promise<void> {
  const newest = await transaction.agreement.findFirst({
    where: { call: callEditScope(access) },
    orderBy: { version: "desc" },
    select: { version: true, text: true },
  });
  if (newest?.text === text) return;
  await transaction.agreement.create({ data: { callId: access.callId, version: (newest?.version ?? 0) + 1, text } });
}
