import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { patternEditScope } from "@/features/patterns/access";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { deleteOriginal, storeOriginal, TooManyBytes } from "@/server/photo-store";
import { inTransaction, type Connection } from "@/server/transaction";
import { openTesterScope, testerScope, type TesterAccess } from "../home/access";
import { isWornByChild } from "./photo-data";
import { ownerColumns, type PhotoOwner } from "./photo-owner-access";
import type { SentPhoto } from "./photo-schema";
import { MAX_PHOTO_BYTES, MAX_PHOTOS, type PhotoProblem, type PhotoUse } from "./photo-views";
import { withdrawUses } from "./withdraw-mutations";

/**
 * Stores a photo that is sent, for the worker to make its sizes. Sent again with the same id, it is stored once.
 *
 * @returns why it is not taken; null where it is stored.
 * @throws {AppError} "not-found" where the id is of somebody else's photo, or access was lost in the meantime.
 */
export async function receivePhoto(
  owner: PhotoOwner,
  { photoId, view, note, troubleId }: SentPhoto,
  body: AsyncIterable<Uint8Array>,
): Promise<PhotoProblem | null> {
  if (await isStored(owner, photoId)) return null;
  const refused = await refusal(database(), owner);
  if (refused !== null) return refused;
  const bytes = await storedBytes(photoId, body);
  if (bytes === "large" || bytes === 0) {
    await deleteOriginal(photoId);
    return bytes === 0 ? "empty" : bytes;
  }
  const problem = await inTransaction(async (transaction) => {
    await holdOwner(transaction, owner);
    const full = await refusal(transaction, owner);
    if (full !== null) return full;
    const about = view === "problem" ? { note, troubleId: await ownTrouble(transaction, owner, troubleId) } : {};
    const data = { id: photoId, ...ownerColumns(owner), view, bytes, ...about };
    await transaction.photo.createMany({ data, skipDuplicates: true });
    return null;
  });
  if (problem !== null) await deleteOriginal(photoId);
  return problem;
}

/** The tester's own trouble spot; null where there is none, such as one that they deleted while the photo was on its way. */
async function ownTrouble(
  connection: Connection,
  owner: PhotoOwner,
  troubleId: string | undefined,
): Promise<string | null> {
  if (troubleId === undefined || !("tester" in owner)) return null;
  const where = { id: troubleId, tester: testerScope(owner.tester) };
  return (await connection.troubleSpot.count({ where })) === 0 ? null : troubleId;
}

async function isStored(owner: PhotoOwner, photoId: string): Promise<boolean> {
  const before = await database().photo.findUnique({
    where: { id: photoId },
    select: { testerId: true, patternId: true },
  });
  if (before === null) return false;
  const { testerId, patternId } = ownerColumns(owner);
  if (before.testerId !== testerId || before.patternId !== patternId) throw new AppError("not-found");
  return true;
}

async function storedBytes(photoId: string, body: AsyncIterable<Uint8Array>): Promise<number | "large"> {
  try {
    return await storeOriginal(photoId, body, MAX_PHOTO_BYTES);
  } catch (error) {
    if (error instanceof TooManyBytes) return "large";
    throw error;
  }
}

/** One after another, so that nobody ever has more photos than the limit. */
async function holdOwner(transaction: Connection, owner: PhotoOwner): Promise<void> {
  if ("tester" in owner)
    await transaction.$queryRaw`SELECT 1 FROM tester WHERE id = ${owner.tester.testerId}::uuid FOR UPDATE`;
  else await transaction.$queryRaw`SELECT 1 FROM pattern WHERE id = ${owner.pattern.patternId}::uuid FOR UPDATE`;
}

async function refusal(connection: Connection, owner: PhotoOwner): Promise<"closed" | "many" | null> {
  const select = { _count: { select: { photos: true } } } as const;
  if ("pattern" in owner) {
    const pattern = await connection.pattern.findUnique({ where: patternEditScope(owner.pattern), select });
    if (pattern === null) throw new AppError("not-found");
    return pattern._count.photos >= MAX_PHOTOS ? "many" : null;
  }
  const where = { ...openTesterScope(owner.tester), stoppedAt: null };
  const tester = await connection.tester.findUnique({ where, select });
  if (tester === null) return "closed";
  return tester._count.photos >= MAX_PHOTOS ? "many" : null;
}

/**
 * Deletes one of a tester's own photos, after the call is closed, too; its files go with it. Each use that they allowed of
 * it becomes something for the designer to do.
 */
export async function deleteOwnPhoto(access: TesterAccess, photoId: string): Promise<void> {
  const { testerId, callId } = access;
  const where = { id: photoId, tester: testerScope(access) };
  await inTransaction(async (transaction) => {
    const photo = await transaction.photo.findFirst({
      where,
      select: { state: true, view: true, tester: { select: { photoConsents: { select: { use: true } } } } },
    });
    const { count } = await transaction.photo.deleteMany({ where });
    // Nobody saw one that never was ready.
    if (photo?.state !== "ready" || count === 0) return;
    const uses = photo.tester?.photoConsents ?? [];
    const data = uses.map(({ use }) => ({ callId, testerId, use, view: photo.view }));
    await transaction.photoWithdrawal.createMany({ data });
  });
}

/**
 * Stores for what a tester allows their photos to be used, after the call is closed, too. Each use that they no longer
 * allow becomes something for the designer to do.
 *
 * @throws {AppError} "not-found" if access was lost in the meantime; "not-allowed" where a child wears the garment and
 *   nobody says that their parent or guardian agrees.
 */
export async function storeConsent(
  access: TesterAccess,
  allowed: readonly PhotoUse[],
  { guardianAgrees = false }: { readonly guardianAgrees?: boolean } = {},
): Promise<void> {
  await inTransaction(async (transaction) => {
    if ((await transaction.tester.count({ where: testerScope(access) })) === 0) throw new AppError("not-found");
    if (
      !guardianAgrees &&
      (await allowsMore(transaction, access, allowed)) &&
      (await isWornByChild(transaction, access))
    )
      throw new AppError(
        "not-allowed",
        "For a child, only their parent or guardian can allow this. Tick that they agree.",
      );
    await withdrawUses(transaction, { ...access, tester: testerScope(access) }, allowed);
    await transaction.photoConsent.createMany({
      data: allowed.map((use) => ({ testerId: access.testerId, use })),
      skipDuplicates: true,
    });
  });
}

async function allowsMore(
  connection: Connection,
  access: TesterAccess,
  allowed: readonly PhotoUse[],
): Promise<boolean> {
  const where = { tester: testerScope(access), use: { in: [...allowed] } };
  return (await connection.photoConsent.count({ where })) < allowed.length;
}

/** The designer has taken down what a tester no longer allows. */
export async function noteTakenDown(access: CallAccess, withdrawalId: string): Promise<void> {
  await database().photoWithdrawal.updateMany({
    where: { id: withdrawalId, doneAt: null, call: callEditScope(access) },
    data: { doneAt: new Date() },
  });
}
