import "server-only";
import { patternOfPieces } from "@/engine/pattern";
import { ownApplicationLink } from "@/features/recruiting/applications/access";
import { callAccess } from "@/features/calls/access";
import { piecesWords } from "@/features/calls/pieces-computed";
import { latestRevision } from "@/features/patterns/data";
import { AppError } from "@/server/errors";
import { foundOr404 } from "@/server/found-or-404";
import { optionalViewer, type Viewer } from "@/server/viewer";
import { publishedCall } from "./access";
import { callDates, readPublished, type CallDay, type PublishedListing, type Taking } from "./data";
import { previewedCall } from "./edited-data";
import { wholeAgreement } from "./photo-sharing-schema";
import { readTyped } from "./read-typed";
import type { Dates } from "./schema";

/** What the page of a tester call shows: the published listing or, for members, the draft. */
export interface CallListing extends Pick<
  PublishedListing,
  "callId" | "title" | "designer" | "isDemo" | "pattern" | "pieces" | "tested" | "places"
> {
  readonly document: Omit<PublishedListing["document"], "dates">;
  readonly dates: { readonly [Key in keyof Dates]?: CallDay };
  readonly agreement: { readonly version: number | null; readonly text: string };
  readonly taking: Taking | "preview";
}

export interface OpenCallPage {
  readonly listing: CallListing;
  readonly viewer: Viewer | null;
  /** The viewer is a member of the call. */
  readonly isDesigner: boolean;
  /** The link of the viewer's application, if it was made while signed in. */
  readonly application: string | null;
}

/** A tester call for any visitor. One that is not published gives a 404, except to its members. */
export async function loadOpenCall(callId: string): Promise<OpenCallPage> {
  return await foundOr404(openCallFor(await optionalViewer(), callId));
}

/** What everybody sees of a tester call, for previews of links. */
export async function loadPublished(callId: string): Promise<PublishedListing> {
  return await foundOr404(publishedCall(callId).then(readPublished));
}

async function openCallFor(viewer: Viewer | null, callId: string): Promise<OpenCallPage> {
  const isDesigner = viewer !== null && (await isMember(viewer, callId));
  try {
    const listing = await readPublished(await publishedCall(callId));
    return { listing, viewer, isDesigner, application: viewer && (await ownApplicationLink(viewer, callId)) };
  } catch (error) {
    if (!isDesigner || !isNotFound(error)) throw error;
    return { listing: await preview(viewer, callId), viewer, isDesigner, application: null };
  }
}

async function isMember(viewer: Viewer, callId: string): Promise<boolean> {
  try {
    await callAccess(viewer, callId, "viewer");
    return true;
  } catch (error) {
    if (isNotFound(error)) return false;
    throw error;
  }
}

function isNotFound(error: unknown): boolean {
  return error instanceof AppError && error.code === "not-found";
}

async function preview(viewer: Viewer, callId: string): Promise<CallListing> {
  const access = await callAccess(viewer, callId, "viewer");
  const [{ document: pattern }, { typed, title, pieces, ...call }] = await Promise.all([
    latestRevision(access.pattern),
    previewedCall(access),
  ]);
  const { listing } = readTyped(typed, pattern);
  return {
    ...call,
    ...{ callId, title: listing.title === "" ? title : listing.title },
    ...{ pattern, pieces: piecesWords(pattern, pieces), tested: patternOfPieces(pattern, pieces) },
    ...{ places: listing.places, document: listing.document },
    dates: listing.document.timeZone === "" ? {} : callDates(listing.dates, listing.document.timeZone),
    agreement: { version: null, text: wholeAgreement(listing.agreement, listing.sharing) },
    taking: "preview",
  };
}
