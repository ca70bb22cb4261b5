import type { Metadata } from "next";
import { ForgetPages } from "@/features/testing/reading/forget-pages";
import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Deleted", robots: { index: false, follow: false } };

/** Shown to whoever has just deleted their account. */
export default function AccountDeletedPage() {
  return (
    <Page title="Your account is deleted" intro="Nobody can sign in to it any more, not even you." width="narrow">
      <ForgetPages />
      <ButtonLink href="/" look="quiet">
        Home
      </ButtonLink>
    </Page>
  );
}
