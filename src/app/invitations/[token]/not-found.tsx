import type { Metadata } from "next";
import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "No invitation" };

/** The same for a link that was never made and for one that was copied in part. */
export default function NoInvitation() {
  return (
    <Page
      title="No invitation"
      intro="This link leads to no invitation: check that it was copied whole, or ask whoever sent it for another."
      width="narrow"
    >
      <ButtonLink href="/">To the start page</ButtonLink>
    </Page>
  );
}
