import "server-only";
import { cache } from "react";
import { publishedCall } from "@/features/openings/access";
import { readPublished, type PublishedOpening } from "@/features/openings/data";
import { foundOr404 } from "@/server/found-or-404";
import { optionalViewer, type Viewer } from "@/server/viewer";
import { applicationAccess, ownApplicationLink } from "./access";
import type { NotTakingWhy } from "./apply-form";
import { readOwnApplication, type OwnApplication } from "./own-data";

export interface ApplyPage {
  readonly viewer: Viewer | null;
  readonly opening: PublishedOpening;
  /** Why she cannot apply now; null where she can. */
  readonly notTaking: NotTakingWhy | null;
}

/** What whoever may apply reads; a call that is not published is the page that there is nothing. */
export const loadApply = cache((callId: string): Promise<ApplyPage> => foundOr404(applyPage(callId)));

async function applyPage(callId: string): Promise<ApplyPage> {
  const viewer = await optionalViewer();
  const opening = await readPublished(await publishedCall(callId));
  const ownLink = viewer === null ? null : await ownApplicationLink(viewer, callId);
  return { viewer, opening, notTaking: notTakingNow(ownLink, opening.taking) };
}

function notTakingNow(ownLink: string | null, taking: PublishedOpening["taking"]): NotTakingWhy | null {
  if (ownLink !== null) return { why: "known", ownLink };
  return taking === "open" ? null : { why: taking };
}

/** What an application's own link shows; any other link is the page that there is nothing. */
export const loadOwnApplication = cache(
  async (link: string): Promise<OwnApplication> => await foundOr404(applicationAccess(link).then(readOwnApplication)),
);
