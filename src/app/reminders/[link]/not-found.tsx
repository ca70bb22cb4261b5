import type { Metadata } from "next";
import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Link not found" };

/** The same for a link that never existed and for one whose test was deleted. */
export default function NoReminders() {
  return (
    <Page
      title="This link does not work"
      intro="Check that you copied the whole link. If your data of this test has been deleted, no reminders come any more."
      width="narrow"
    >
      <ButtonLink href="/">Home</ButtonLink>
    </Page>
  );
}
