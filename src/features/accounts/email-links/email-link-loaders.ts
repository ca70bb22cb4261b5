import "server-only";
import { cache } from "react";
import { isMailOn } from "@/features/mail/mail-status";
import { foundOr404 } from "@/server/found-or-404";
import { optionalViewer, type Viewer } from "@/server/viewer";
import { emailLinkAccess } from "./access";
import { readEmailLink, type EmailLinkRead } from "./email-link-data";

export interface EmailLinkPage extends EmailLinkRead {
  readonly viewer: Viewer | null;
  readonly isMailOn: boolean;
}

/** What a mailed link can do. Looking at it uses nothing up: programs that scan mail open every link. */
export const loadEmailLink = cache(async (link: string): Promise<EmailLinkPage> => {
  const viewer = await optionalViewer();
  const access = await foundOr404(emailLinkAccess(link));
  return { ...(await foundOr404(readEmailLink(access))), viewer, isMailOn: isMailOn() };
});
