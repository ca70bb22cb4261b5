import "server-only";
import type { PatternDocument, Places } from "@/engine/pattern";
import type { CallAccess } from "@/features/calls/access";
import { callPlaces } from "@/features/calls/data";
import { readOpening, type Opening } from "@/features/openings/data";
import { environment } from "@/server/environment";
import { applicationBoard, type ListedApplication } from "./application-board";
import { callApplications } from "./data";

export interface LoadedBoard {
  /** Null while the call is not published. */
  readonly opening: Opening | null;
  readonly places: Places;
  readonly fitBy: readonly string[];
  /** The newest first. */
  readonly applications: readonly ListedApplication[];
}

/** Everybody who has applied to a call, each beside its sizes. */
export async function loadBoard(access: CallAccess, pattern: PatternDocument): Promise<LoadedBoard> {
  const [opening, places, applications] = await Promise.all([
    readOpening(access),
    callPlaces(access),
    callApplications(access),
  ]);
  const fitBy = opening?.document.fitBy ?? [];
  return { opening, places, fitBy, applications: applicationBoard(applications, { pattern, places, fitBy }) };
}

/** The whole address of a call's public page. */
export function openCallAddress(callId: string): string {
  return new URL(`/open-calls/${callId}`, environment().NEXTAUTH_URL).href;
}
