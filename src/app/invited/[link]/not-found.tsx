import type { Metadata } from "next";
import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Invitation not found" };

/** The same for a link that never existed, one that has been replaced, and one that was copied only in part. */
export default function NoInvitation() {
  return (
    <Page
      title="This invitation link does not work"
      intro="Check that you copied the whole link. If you did, look for a newer message from the designer, or ask them for a new link."
      width="narrow"
    >
      <ButtonLink href="/">Start page</ButtonLink>
    </Page>
  );
}
