import "server-only";
import { placeApplicants } from "@/engine/places";
import { ownValue } from "@/engine/pattern";
import { openCallEditScope, type CallAccess } from "@/features/calls/access";
import { lockOpenCall } from "@/features/calls/mutations";
import type { TesterDates } from "@/features/recruiting/listing/schema";
import { latestRevision } from "@/features/patterns/data";
import { checkMostTesters, inviteApplicants } from "@/features/recruiting/invitations/mutations";
import type { Prisma } from "@/generated/prisma/client";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { placesLeft, placingQuestion, sizeOf } from "./placing-question";
import { placingRows } from "./data";
import { offerTo } from "./offer-mutations";
import { answeredSizes, placedNow, placingName } from "./placing";
import type { Considering } from "./stored-board";

/**
 * Assigns sizes again to everyone who is neither locked, left waiting nor invited.
 *
 * @throws {AppError} "closed" where the call is closed or not the viewer's to edit; "no-place" where more people are locked in a size than it may have testers.
 */
export async function givePlaces(
  access: CallAccess,
  asked: { readonly considering: Considering; readonly now: Date },
): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const rows = await placingRows(access, transaction);
    const answer = placeApplicants(placingQuestion(rows, asked).document, { endsFirst: true });
    if (answer.status === "faults") throw new AppError("no-place", answer.faults.map(({ says }) => says).join(" "));
    const sizes = answeredSizes(rows.applicants, answer);
    const free = { ...notInvited(access), pin: null };
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

/** A designer's decision about one applicant's size. Nobody else is moved. */
export type PlaceChange =
  | { readonly kind: "move"; readonly size: string }
  | { readonly kind: "lock" | "unlock" | "leave-waiting" | "consider" };

/**
 * @throws {AppError} "closed" where the call is closed or not the viewer's to edit; "changed-meanwhile" where they have been invited or have withdrawn, or the change no longer applies; "no-place" for a size that would have more testers than it may; "not-found" for a size that the pattern does not have.
 */
export async function changePlace(
  access: CallAccess,
  { applicationId, change }: { readonly applicationId: string; readonly change: PlaceChange },
): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    if (change.kind === "move") await checkSize(transaction, access, { applicationId, size: change.size });
    const { where, data } = changed(change);
    const { count } = await transaction.application.updateMany({
      where: { ...notInvited(access), id: applicationId, ...where },
      data,
    });
    if (count === 0) throw new AppError("changed-meanwhile", NOT_CHANGED);
  });
}

const NOT_CHANGED =
  "Nothing was changed: this applicant has withdrawn, was invited, or was changed by someone else in the meantime. The page now shows the current state.";

function changed(change: PlaceChange): {
  readonly where: Prisma.ApplicationWhereInput;
  readonly data: Prisma.ApplicationUpdateManyMutationInput;
} {
  switch (change.kind) {
    case "move":
      return { where: {}, data: { size: change.size, pin: "size" } };
    case "lock":
      return { where: { size: { not: null } }, data: { pin: "size" } };
    case "unlock":
      return { where: {}, data: { pin: null } };
    case "leave-waiting":
      return { where: {}, data: { size: null, pin: "waiting" } };
    case "consider":
      return { where: { pin: "waiting" }, data: { pin: null } };
  }
}

interface Sending {
  /** Identifies the placing that the sender saw; see `placingName`. */
  readonly saw: string;
  readonly expiresAt: Date;
}

/**
 * Invites everyone who has a size, as the sender saw them.
 *
 * @returns how many were invited; 0 where everyone had been already.
 * @throws {AppError} "closed" where the call is closed or not the viewer's to edit; "changed-meanwhile" where the placing is no longer the one that they saw; "no-place" where a size would have more testers than it may.
 */
export async function sendPlacing(access: CallAccess, { saw, expiresAt }: Sending): Promise<number> {
  return await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const rows = await placingRows(access, transaction);
    const placed = placedNow(rows);
    if (placed.length === 0) return 0;
    if (placingName(placed) !== saw) throw new AppError("changed-meanwhile", NOT_SENT);
    const chosen = placed.map(({ applicant }) => applicant);
    const { invited, refused } = await offerTo(access, { rows, chosen, expiresAt }, transaction);
    const [tooMany] = refused;
    if (tooMany !== undefined) throw new AppError("no-place", tooMany.why);
    return invited.length;
  });
}

const NOT_SENT =
  "Nothing was sent: sizes or testers changed since you loaded the page. It now shows the current state. Please check it and send again.";

interface Filling {
  readonly applicationId: string;
  readonly size: string;
  readonly expiresAt: Date;
  /** The person's own dates, because they start later than the others. */
  readonly dates: TesterDates;
  readonly now: Date;
}

/**
 * Invites a waiting applicant to an open spot, and moves nobody.
 *
 * @throws {AppError} "closed" where the call is closed or not the viewer's to edit; "changed-meanwhile" where they no longer wait; "no-place" where the spot is taken.
 */
export async function fillFreePlace(
  access: CallAccess,
  { applicationId, size, expiresAt, dates, now }: Filling,
): Promise<void> {
  await inTransaction(async (transaction) => {
    await lockOpenCall(transaction, access);
    const rows = await placingRows(access, transaction);
    const applicant = rows.applicants.find((each) => each.applicationId === applicationId);
    if (applicant === undefined || applicant.decision === "no" || sizeOf(applicant, rows.pattern) !== null)
      throw new AppError("changed-meanwhile", NOT_WAITING);
    const standing = placedNow(rows).filter((placed) => placed.size === size).length;
    if (standing >= (ownValue(placesLeft(rows, now), size)?.wanted ?? 0)) throw new AppError("no-place", NOT_FREE);
    await inviteApplicants(access, { invitations: [{ applicationId, size }], expiresAt, dates }, transaction);
  });
}

const NOT_WAITING =
  "Nobody was invited: this applicant is no longer waiting. Someone may have given them a size in the meantime.";
const NOT_FREE = "Nobody was invited: this spot is no longer open. Someone may have filled it in the meantime.";

/** Where clause of applications that can still get a size, for writing while the call is open. */
function notInvited(access: CallAccess): Prisma.ApplicationWhereInput {
  return { call: openCallEditScope(access), withdrawnAt: null, tester: null };
}

/** @throws {AppError} "not-found" for a size that the pattern does not have; "no-place" for one with the most testers. */
async function checkSize(
  transaction: Connection,
  access: CallAccess,
  { applicationId, size }: { readonly applicationId: string; readonly size: string },
): Promise<void> {
  const { document } = await latestRevision(access.pattern, transaction);
  if (!document.sizes.some(({ id }) => id === size)) throw new AppError("not-found");
  const others = await transaction.application.count({
    where: {
      ...notInvited(access),
      size,
      id: { not: applicationId },
      OR: [{ decision: null }, { decision: { not: "no" } }],
    },
  });
  const assigned = Array.from({ length: others }, () => size);
  await checkMostTesters(transaction, { call: openCallEditScope(access), sizes: [size], assigned });
}
