import type { Metadata } from "next";
import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Deleted", robots: { index: false, follow: false } };

/** Where a tester comes out who has had what is kept of her deleted. */
export default function DeletedPage() {
  return (
    <Page
      title="It is deleted"
      intro="What was kept of you in that test is gone; of a report that you had sent, its numbers alone stay. Nobody comes in to that test any more."
      width="narrow"
    >
      <ButtonLink href="/" look="quiet">
        To the start page
      </ButtonLink>
    </Page>
  );
}
