import "server-only";
import { z } from "zod";
import type { PatternDocument, Places } from "@/engine/pattern";
import type { CallAccess } from "@/features/calls/access";
import { callPlaces } from "@/features/calls/places-data";
import { readListing, type Listing } from "../../listing/data";
import { wholeAddress } from "@/server/whole-address";
import { AppError } from "@/server/errors";
import { foundOr404 } from "@/server/found-or-404";
import { applicationBoard, type ListedApplication } from "./application-board";
import { chosenPage, neighbourIds, type ChosenApplications, type NeighbourIds } from "./application-list-data";
import { callApplications } from "../data";
import type { ListQuery } from "./list-query";

export interface LoadedList extends ChosenApplications {
  /** Null while the call is not published. */
  readonly listing: Listing | null;
  /** The applications of the page, the newest first. */
  readonly applications: readonly ListedApplication[];
}

interface Asked {
  readonly pattern: PatternDocument;
  readonly query: ListQuery;
}

/** A page of a call's applications, each compared with the sizes. */
export async function loadList(access: CallAccess, { pattern, query }: Asked): Promise<LoadedList> {
  const { listing, board } = await readBoard(access, pattern);
  const chosen = await chosenPage(access, { ...board, query });
  const applications = await callApplications(access, chosen.ids);
  return { ...chosen, listing, applications: applicationBoard(applications, board) };
}

export interface LoadedApplication {
  readonly application: ListedApplication;
  readonly neighbours: NeighbourIds;
}

/** One application of a call, and its neighbours in the selected list. */
export async function loadOneApplication(
  access: CallAccess,
  { applicationId, ...asked }: Asked & { readonly applicationId: string },
): Promise<LoadedApplication> {
  return await foundOr404(oneApplication(access, { applicationId, ...asked }));
}

async function oneApplication(
  access: CallAccess,
  { applicationId, pattern, query }: Asked & { readonly applicationId: string },
): Promise<LoadedApplication> {
  if (!z.uuid().safeParse(applicationId).success) throw new AppError("not-found");
  const { board } = await readBoard(access, pattern);
  const [found, neighbours] = await Promise.all([
    callApplications(access, [applicationId]),
    neighbourIds(access, applicationId, { ...board, query }),
  ]);
  const [application] = applicationBoard(found, board);
  if (application === undefined) throw new AppError("not-found");
  return { application, neighbours };
}

interface ReadBoard {
  readonly listing: Listing | null;
  readonly board: { readonly pattern: PatternDocument; readonly places: Places; readonly fitBy: readonly string[] };
}

async function readBoard(access: CallAccess, pattern: PatternDocument): Promise<ReadBoard> {
  const [listing, places] = await Promise.all([readListing(access), callPlaces(access)]);
  return { listing, board: { pattern, places, fitBy: listing?.document.fitBy ?? [] } };
}

/** The whole address of a call's public page. */
export function openCallAddress(callId: string): string {
  return wholeAddress(`/open-calls/${callId}`);
}
