import "server-only";
import { cookies } from "next/headers";
import { redirect } from "next/navigation";
import { cache } from "react";
import { foundOr404 } from "@/server/found-or-404";
import { isKey } from "@/server/link-key";
import { optionalViewer, type Viewer } from "@/server/viewer";
import { invitedAccess, type InvitedAccess } from "@/features/recruiting/invitations/access";
import { readInvited, type InvitedRead } from "./invited-data";
import { invitedState, type InvitedState } from "./invited-state";
import { testerCookieName } from "../home/tester-cookie-name";

export interface InvitedPage {
  readonly viewer: Viewer | null;
  readonly invited: InvitedRead;
  readonly state: Exclude<InvitedState, "own">;
}

/** What an invitation's link leads to. A browser that has access already is redirected to the tester's home page. */
export const loadInvited = cache(async (link: string): Promise<InvitedPage> => {
  const viewer = await optionalViewer();
  const access = await foundOr404(invitedAccess(link));
  const invited = await foundOr404(readInvited(access));
  const isLetIn = await isBrowserLetIn(access);
  const state = invitedState(invited, { accountId: viewer?.accountId ?? null, isLetIn }, new Date());
  if (state === "own") redirect(`/testing/${invited.testerId}`);
  return { viewer, invited, state };
});

async function isBrowserLetIn({ testerId, linkVersion }: InvitedAccess): Promise<boolean> {
  const key = (await cookies()).get(testerCookieName(testerId))?.value ?? "";
  return isKey(key, "tester", { id: testerId, version: linkVersion });
}
