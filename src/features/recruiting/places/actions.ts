"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { callPageHref } from "@/features/calls/call-pages";
import { daySchema, type TesterDates } from "@/features/recruiting/listing/schema";
import { actingViewer, viewerAction, type Failure } from "@/server/action";
import { formAction, type FormFaults } from "@/server/form-action";
import { parseForm, readForm } from "@/server/read-form";
import { endOfDay, isDayIn } from "@/server/time-zone";
import { callTimeZone, placingRows } from "./data";
import { farMoveWords } from "./far-move";
import { changePlace, fillFreePlace, givePlaces, sendPlacing } from "./mutations";
import { calculatePlacing } from "./placing-mutations";
import { offerPlaces, type Offered } from "./offer-mutations";
import { changePlaceSchema, fillSchema, givePlacesSchema, offerSchema, sendSchema } from "./schema";

/** Assigns sizes again; people the designer has locked and people already invited stay. */
export const solvePlaces = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, with: considering } = parseForm(givePlacesSchema, form);
    const access = await callAccess(viewer, callId, "editor");
    revalidatePath(callPageHref(callId, "sizes"));
    await thenCalculated(access, () => givePlaces(access, { considering, now: new Date() }));
    return undefined;
  },
);

/** Nothing was moved yet: the size is far from theirs. */
export interface MoveWarning {
  readonly status: "warned";
  readonly size: string;
  readonly says: string;
}

/** Moves, locks or leaves waiting one applicant, or undoes that. */
export const placePerson = viewerAction(
  async (
    viewer,
    _last: Failure | MoveWarning | undefined,
    form: FormData,
  ): Promise<Failure | MoveWarning | undefined> => {
    const { callId, applicationId, kind, size = "", warned } = parseForm(changePlaceSchema, form);
    const access = await callAccess(viewer, callId, "editor");
    if (kind === "move" && warned !== size) {
      const says = farMoveWords(await placingRows(access), { applicationId, size }, viewer.unit);
      if (says !== null) return { status: "warned", size, says };
    }
    revalidatePath(callPageHref(callId, "sizes"));
    const change = kind === "move" ? { kind, size } : { kind };
    await thenCalculated(access, () => changePlace(access, { applicationId, change }));
    return undefined;
  },
);

/** Invites everyone who has a size, as the designer saw them. */
export const sendInvitations = formAction(sendSchema, async ({ callId, saw, endsOn }) => {
  const access = await callAccess(await actingViewer(), callId, "editor");
  const timeZone = await callTimeZone(access);
  const faults = endFaults(endsOn, timeZone);
  if (faults !== undefined) return faults;
  revalidatePath(callPageHref(callId, "sizes"));
  const expiresAt = endOfDay(endsOn, timeZone);
  const sent = await thenCalculated(access, () => sendPlacing(access, { saw, expiresAt }));
  redirect(`/calls/${callId}/sizes?sent=${sent}#invitations`);
});

/** What became of those who were selected. */
export interface OfferAnswer extends Offered {
  readonly status: "offered";
}

/** Invites all selected applicants who have a size and no invitation. */
export const inviteSelected = viewerAction(
  async (
    viewer,
    _last: Failure | OfferAnswer | undefined,
    form: FormData,
  ): Promise<Failure | OfferAnswer | undefined> => {
    const { callId, endsOn } = parseForm(offerSchema, form);
    const access = await callAccess(viewer, callId, "editor");
    const applicationIds = z.array(z.uuid()).parse(readForm(form).get("applicationId") ?? []);
    if (applicationIds.length === 0)
      return { status: "failed", says: "Choose applications first, by the box before the name." };
    const timeZone = await callTimeZone(access);
    const fault = daySchema.safeParse(endsOn).success ? endFaults(endsOn, timeZone)?.endsOn?.[0] : NO_END;
    if (fault !== undefined) return { status: "failed", says: fault };
    revalidatePath(`/calls/${callId}`, "layout");
    const expiresAt = endOfDay(endsOn, timeZone);
    const offered = await thenCalculated(access, () => offerPlaces(access, { applicationIds, expiresAt }));
    return { status: "offered", ...offered };
  },
);

const NO_END = "Enter the last day on which they can reply, such as 2027-03-14.";

/** Invites a waiting applicant to a spot that has opened up. */
export const fillPlaceAgain = formAction(fillSchema, async ({ callId, applicationId, size, endsOn, ...dates }) => {
  const access = await callAccess(await actingViewer(), callId, "editor");
  const timeZone = await callTimeZone(access);
  const faults = { ...endFaults(endsOn, timeZone), ...dateFaults(dates, timeZone) };
  if (Object.keys(faults).length > 0) return faults;
  revalidatePath(callPageHref(callId, "sizes"));
  const expiresAt = endOfDay(endsOn, timeZone);
  await thenCalculated(access, () => fillFreePlace(access, { applicationId, size, expiresAt, dates, now: new Date() }));
  redirect(`/calls/${callId}/sizes?sent=1#invitations`);
});

/** Refreshes even when refused, so that the designer sees the current state next. */
async function thenCalculated<Result>(access: CallAccess, write: () => Promise<Result>): Promise<Result> {
  try {
    return await write();
  } finally {
    await calculatePlacing(access);
  }
}

function endFaults(endsOn: string, timeZone: string): FormFaults | undefined {
  if (!isDayIn(endsOn, timeZone)) return { endsOn: [noDay(timeZone)] };
  if (endOfDay(endsOn, timeZone) > new Date()) return undefined;
  return { endsOn: ["This day is in the past. Enter today or a later day."] };
}

function dateFaults({ startOn, swatchBy, reportBy }: TesterDates, timeZone: string): FormFaults {
  const days = Object.entries({ startOn, swatchBy, reportBy }).filter(([, day]) => !isDayIn(day, timeZone));
  if (days.length > 0) return Object.fromEntries(days.map(([name]) => [name, [noDay(timeZone)]]));
  return {
    ...(swatchBy < startOn ? { swatchBy: ["The swatch is due before the start. Enter a day after the start."] } : {}),
    ...(reportBy < swatchBy
      ? { reportBy: ["The report is due before the swatch. Enter a day after the swatch."] }
      : {}),
  };
}

function noDay(timeZone: string): string {
  return `This day does not exist in ${timeZone}. Choose another.`;
}
