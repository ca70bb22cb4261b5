import type { Metadata } from "next";
import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "No invitation" };

/** The same for a link that was never made, for one that was made anew since, and for one that was copied in part. */
export default function NoInvitation() {
  return (
    <Page
      title="No invitation"
      intro="This link leads to no invitation. Check that it was copied whole; if it was, a newer one may have been sent to you: look for that, or ask whoever invited you for another."
      width="narrow"
    >
      <ButtonLink href="/">To the start page</ButtonLink>
    </Page>
  );
}
