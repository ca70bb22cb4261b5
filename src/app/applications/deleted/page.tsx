import type { Metadata } from "next";
import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Deleted", robots: { index: false, follow: false } };

export default function DeletedPage() {
  return (
    <Page
      title="Your application is deleted"
      intro="Nothing of it is stored any more, and its address no longer works."
      width="narrow"
    >
      <ButtonLink href="/" look="quiet">
        Home
      </ButtonLink>
    </Page>
  );
}
