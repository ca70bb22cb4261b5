import "server-only";
import { cache } from "react";
import { publishedCall } from "@/features/recruiting/listing/access";
import { readPublished, type PublishedListing } from "@/features/recruiting/listing/data";
import { AppError } from "@/server/errors";
import { isFormSent } from "@/server/form-sent";
import { foundOr404 } from "@/server/found-or-404";
import { optionalViewer, type Viewer } from "@/server/viewer";
import { dataViews, type DataView } from "../views/view-data";
import { applicationAccess, applicationScope, ownApplicationLink } from "./access";
import type { NotTakingWhy } from "./apply/apply-answer";
import { ownApplicationAddress } from "./own/own-address";
import { readOwnApplication, type OwnApplication } from "./own/own-data";

export interface ApplyPage {
  readonly viewer: Viewer | null;
  /** Null if it was unpublished in the meantime. */
  readonly listing: PublishedListing | null;
  /** Why the viewer cannot apply now; null if they can. */
  readonly notTaking: NotTakingWhy | null;
}

/** What the application form needs; a call that is not published gives a 404. */
export const loadApply = cache((callId: string): Promise<ApplyPage> => foundOr404(applyPage(callId)));

async function applyPage(callId: string): Promise<ApplyPage> {
  const viewer = await optionalViewer();
  const listing = await listingOrGone(callId);
  if (listing === null) return { viewer, listing, notTaking: null };
  const ownLink = viewer === null ? null : await ownApplicationLink(viewer, callId);
  return { viewer, listing, notTaking: notTakingNow(ownLink, listing.taking) };
}

/** Null if it is not published and a form was just sent: without scripts, the page gives back what was typed. */
async function listingOrGone(callId: string): Promise<PublishedListing | null> {
  try {
    return await readPublished(await publishedCall(callId));
  } catch (error) {
    if (error instanceof AppError && error.code === "not-found" && (await isFormSent())) return null;
    throw error;
  }
}

function notTakingNow(ownLink: string | null, taking: PublishedListing["taking"]): NotTakingWhy | null {
  if (ownLink !== null) return { why: "known", ownLink };
  return taking === "open" ? null : { why: taking };
}

export interface OwnPage {
  readonly application: OwnApplication;
  /** The whole address of the page. */
  readonly address: string;
  /** The applicant's, or the call's if the browser did not give one. */
  readonly timeZone: string;
  /** The call still takes applications. */
  readonly isTaking: boolean;
  /** Who looked at it. */
  readonly views: readonly DataView[];
}

/** What an application's link shows; any other link gives a 404. */
export const loadOwnApplication = cache((link: string): Promise<OwnPage> => foundOr404(ownPage(link)));

async function ownPage(link: string): Promise<OwnPage> {
  const access = await applicationAccess(link);
  const [application, views] = await Promise.all([
    readOwnApplication(access),
    dataViews({ application: applicationScope(access) }),
  ]);
  const { document, listing, isClosed } = application;
  return {
    ...{ application, views },
    address: ownApplicationAddress(application.applicationId),
    timeZone: document.timeZone ?? listing?.timeZone ?? "UTC",
    isTaking: !isClosed && listing !== null && listing.dates.applyUntil.at > new Date(),
  };
}
