import "server-only";
import { cache } from "react";
import { publishedCall } from "@/features/openings/access";
import { readPublished, type PublishedOpening } from "@/features/openings/data";
import { environment } from "@/server/environment";
import { AppError } from "@/server/errors";
import { isFormSent } from "@/server/form-sent";
import { foundOr404 } from "@/server/found-or-404";
import { optionalViewer, type Viewer } from "@/server/viewer";
import { applicationAccess, ownApplicationLink } from "./access";
import type { NotTakingWhy } from "./apply-form";
import { readOwnApplication, type OwnApplication } from "./own-data";

export interface ApplyPage {
  readonly viewer: Viewer | null;
  /** Null where it was taken back while she typed. */
  readonly opening: PublishedOpening | null;
  /** Why she cannot apply now; null where she can. */
  readonly notTaking: NotTakingWhy | null;
}

/** What whoever may apply reads; a call that is not published is the page that there is nothing. */
export const loadApply = cache((callId: string): Promise<ApplyPage> => foundOr404(applyPage(callId)));

async function applyPage(callId: string): Promise<ApplyPage> {
  const viewer = await optionalViewer();
  const opening = await openingOrGone(callId);
  if (opening === null) return { viewer, opening, notTaking: null };
  const ownLink = viewer === null ? null : await ownApplicationLink(viewer, callId);
  return { viewer, opening, notTaking: notTakingNow(ownLink, opening.taking) };
}

/** Null where it is not published and she has just sent her form: without scripts, its page gives back what she typed. */
async function openingOrGone(callId: string): Promise<PublishedOpening | null> {
  try {
    return await readPublished(await publishedCall(callId));
  } catch (error) {
    if (error instanceof AppError && error.code === "not-found" && (await isFormSent())) return null;
    throw error;
  }
}

function notTakingNow(ownLink: string | null, taking: PublishedOpening["taking"]): NotTakingWhy | null {
  if (ownLink !== null) return { why: "known", ownLink };
  return taking === "open" ? null : { why: taking };
}

export interface OwnPage {
  readonly application: OwnApplication;
  /** The whole address of the page. */
  readonly address: string;
  /** Hers; the call's where her browser told none. */
  readonly timeZone: string;
  /** The call takes applications still. */
  readonly isTaking: boolean;
}

/** What an application's own link shows; any other link is the page that there is nothing. */
export const loadOwnApplication = cache((link: string): Promise<OwnPage> => foundOr404(ownPage(link)));

async function ownPage(link: string): Promise<OwnPage> {
  const application = await readOwnApplication(await applicationAccess(link));
  const { document, opening, isClosed } = application;
  return {
    application,
    address: new URL(`/applications/${link}`, environment().NEXTAUTH_URL).href,
    timeZone: document.timeZone ?? opening?.timeZone ?? "UTC",
    isTaking: !isClosed && opening !== null && opening.dates.applyUntil.at > new Date(),
  };
}
