import type { Metadata } from "next";
import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Invitation not found" };

/** The same for a link that never existed and for an incomplete one. */
export default function NoInvitation() {
  return (
    <Page
      title="Invitation not found"
      intro="Check that you copied the whole link, or ask the person who sent it for a new one."
      width="narrow"
    >
      <ButtonLink href="/">Home</ButtonLink>
    </Page>
  );
}
