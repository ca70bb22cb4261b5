import "server-only";
import { redirect } from "next/navigation";
import { cache } from "react";
import { clientAddress } from "@/server/client-address";
import { AppError } from "@/server/errors";
import { foundOr404 } from "@/server/found-or-404";
import { optionalViewer, type Viewer } from "@/server/viewer";
import { readInvitation } from "./invitation-data";
import { proveToken } from "./prove-token";
import { invitationState, type InvitationState } from "./invitation-state";

type InvitationShown = Exclude<InvitationState, { status: "taken" }>;

export interface InvitationPage {
  readonly viewer: Viewer | null;
  readonly state: InvitationShown | { readonly status: "refused"; readonly says: string };
}

/**
 * The invitation of a link; unknown and malformed ones show the not-found page. Once per request, because a guess counts. Those who accepted it are redirected to its pattern.
 */
export const loadInvitation = cache(async (token: string): Promise<InvitationPage> => {
  const viewer = await optionalViewer();
  try {
    return { viewer, state: await foundOr404(stateBehind(token, viewer)) };
  } catch (error) {
    if (error instanceof AppError && error.code === "too-many-tries")
      return { viewer, state: { status: "refused", says: error.message } };
    throw error;
  }
});

async function stateBehind(token: string, viewer: Viewer | null): Promise<InvitationShown> {
  const access = await proveToken(token, await clientAddress());
  const state = invitationState(await readInvitation(access, viewer), viewer?.accountId ?? null, new Date());
  if (state.status === "taken") redirect(`/patterns/${state.patternId}`);
  return state;
}
