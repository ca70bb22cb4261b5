import type { Metadata } from "next";
import { isMailOn } from "@/features/mail/mail-status";
import { optionalViewer } from "@/server/viewer";
import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Invitation not found" };

/** The same for a link that never existed, one that has been replaced, and one that was copied only in part. */
export default async function NoInvitation() {
  await optionalViewer();
  return (
    <Page
      title="This invitation link does not work"
      intro="Check that you copied the whole link. If you did, look for a newer message from the designer, or ask them for a new link."
      width="narrow"
    >
      {isMailOn() ? (
        <ButtonLink href="/lost-link">Get your links again</ButtonLink>
      ) : (
        <ButtonLink href="/">Home</ButtonLink>
      )}
    </Page>
  );
}
