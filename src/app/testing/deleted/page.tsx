import type { Metadata } from "next";
import { ForgetPages } from "@/features/testing/reading/forget-pages";
import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Deleted", robots: { index: false, follow: false } };

/** Shown to a tester who has just deleted their data. */
export default function DeletedPage() {
  return (
    <Page
      title="Your data is deleted"
      intro="If you had sent a report, only its numbers stay, without your name. Nobody can open your pages of that test any more."
      width="narrow"
    >
      <ForgetPages />
      <ButtonLink href="/" look="quiet">
        Home
      </ButtonLink>
    </Page>
  );
}
