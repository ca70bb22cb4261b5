import "server-only";
import { placeApplicants } from "@/engine/places";
import { ownValue } from "@/engine/pattern";
import { openCallEditScope, type CallAccess } from "@/features/calls/access";
import { lockOpenCall } from "@/features/calls/mutations";
import type { TesterDates } from "@/features/openings/schema";
import { latestRevision } from "@/features/patterns/data";
import { inviteApplicants } from "@/features/testers/mutations";
import type { Prisma } from "@/generated/prisma/client";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { placesLeft, placingQuestion, sizeOf } from "./applicants-document";
import { placingRows } from "./data";
import { answeredSizes, placedNow, placingName } from "./placing";
import type { Considering } from "./stored-placing";

/**
 * Gives places anew to all whom the designer has not settled by hand and who are not invited yet.
 *
 * @throws {AppError} "closed" where the call is closed or not the viewer's to edit; "no-place" where more are locked in
 * a size than there are places.
 */
export async function givePlaces(
  access: CallAccess,
  asked: { readonly considering: Considering; readonly now: Date },
): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const rows = await placingRows(access, transaction);
    const answer = placeApplicants(placingQuestion(rows, asked).document);
    if (answer.status === "faults") throw new AppError("no-place", answer.faults.map(({ says }) => says).join(" "));
    const sizes = answeredSizes(rows.applicants, answer);
    const free = { ...notInvited(access), hold: null };
    await transaction.application.updateMany({
      where: { ...free, size: { not: null }, id: { notIn: [...sizes.keys()] } },
      data: { size: null },
    });
    for (const { id: size } of rows.pattern.sizes) {
      const ids = [...sizes].filter(([, given]) => given === size).map(([id]) => id);
      await transaction.application.updateMany({ where: { ...free, id: { in: ids } }, data: { size } });
    }
  });
}

/** What a designer settles by hand about one applicant. Nobody else is moved by it. */
export type PlaceChange =
  | { readonly kind: "move"; readonly size: string }
  | { readonly kind: "lock" | "unlock" | "leave-waiting" | "consider" };

/**
 * @throws {AppError} "closed" where the call is closed or not the viewer's to edit; "changed-meanwhile" where she has
 * been invited or has withdrawn, or where what is changed is not so; "not-found" for a size that the pattern has not.
 */
export async function changePlace(
  access: CallAccess,
  { applicationId, change }: { readonly applicationId: string; readonly change: PlaceChange },
): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    if (change.kind === "move") await checkSize(transaction, access, change.size);
    const { where, data } = changed(change);
    const { count } = await transaction.application.updateMany({
      where: { ...notInvited(access), id: applicationId, ...where },
      data,
    });
    if (count === 0) throw new AppError("changed-meanwhile", NOT_CHANGED);
  });
}

const NOT_CHANGED =
  "Nothing was changed: this applicant has withdrawn or was invited meanwhile, or somebody has changed the same. Below is how it stands now.";

function changed(change: PlaceChange): {
  readonly where: Prisma.ApplicationWhereInput;
  readonly data: Prisma.ApplicationUpdateManyMutationInput;
} {
  switch (change.kind) {
    case "move":
      return { where: {}, data: { size: change.size, hold: "size" } };
    case "lock":
      return { where: { size: { not: null } }, data: { hold: "size" } };
    case "unlock":
      return { where: {}, data: { hold: null } };
    case "leave-waiting":
      return { where: {}, data: { size: null, hold: "waiting" } };
    case "consider":
      return { where: { hold: "waiting" }, data: { hold: null } };
  }
}

interface Sending {
  /** The name of the placing that the sender saw; see `placingName`. */
  readonly saw: string;
  readonly endsAt: Date;
}

/**
 * Invites all who stand in a size, as the sender saw them.
 *
 * @returns how many are invited; 0 where all of them have been already.
 * @throws {AppError} "closed" where the call is closed or not the viewer's to edit; "changed-meanwhile" where the placing
 * is no longer the one she saw; "no-place" where a size has no place left for all of them.
 */
export async function sendPlacing(access: CallAccess, { saw, endsAt }: Sending): Promise<number> {
  return await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const placed = placedNow(await placingRows(access, transaction));
    if (placed.length === 0) return 0;
    if (placingName(placed) !== saw) throw new AppError("changed-meanwhile", NOT_SENT);
    const invitations = placed.map(({ applicant, size }) => ({ applicationId: applicant.applicationId, size }));
    return await inviteApplicants(access, { invitations, endsAt }, transaction);
  });
}

const NOT_SENT =
  "Nothing was sent: the placing has changed since you looked at it. Below is how it stands now; look again, then send.";

interface Filling {
  readonly applicationId: string;
  readonly size: string;
  readonly endsAt: Date;
  /** Of her own, for she begins later than the others. */
  readonly dates: TesterDates;
  readonly now: Date;
}

/**
 * Invites one of those waiting into a place that is free again, and moves nobody.
 *
 * @throws {AppError} "closed" where the call is closed or not the viewer's to edit; "changed-meanwhile" where she does
 * not wait any more; "no-place" where the place is taken, by somebody who is invited or who stands in it.
 */
export async function fillFreePlace(
  access: CallAccess,
  { applicationId, size, endsAt, dates, now }: Filling,
): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const rows = await placingRows(access, transaction);
    const applicant = rows.applicants.find((each) => each.applicationId === applicationId);
    if (applicant === undefined || applicant.word === "no" || sizeOf(applicant, rows.pattern) !== null)
      throw new AppError("changed-meanwhile", NOT_WAITING);
    const standing = placedNow(rows).filter((placed) => placed.size === size).length;
    if (standing >= (ownValue(placesLeft(rows, now), size)?.wanted ?? 0)) throw new AppError("no-place", NOT_FREE);
    await inviteApplicants(access, { invitations: [{ applicationId, size }], endsAt, dates }, transaction);
  });
}

const NOT_WAITING =
  "Nobody was invited: this applicant does not wait any more. Somebody may have given or sent a place meanwhile.";
const NOT_FREE = "Nobody was invited: this place is not free any more. Somebody may have filled it meanwhile.";

/** Where clause of the applications that can still be placed, for writing while the call is open. */
function notInvited(access: CallAccess): Prisma.ApplicationWhereInput {
  return { call: openCallEditScope(access), withdrawnAt: null, tester: null };
}

/** @throws {AppError} "not-found" for a size that the pattern has not. */
async function checkSize(transaction: Connection, access: CallAccess, size: string): Promise<void> {
  const { document } = await latestRevision(access.pattern, transaction);
  if (!document.sizes.some(({ id }) => id === size)) throw new AppError("not-found");
}
