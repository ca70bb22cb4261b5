import type { Metadata } from "next";
import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Link not found" };

/** The same for a link that never existed and for an incomplete one. */
export default function NoEmailLink() {
  return (
    <Page
      title="This link does not work"
      intro="Check that you copied the whole link. If you did, sign in, or ask for a new link there."
      width="narrow"
    >
      <ButtonLink href="/sign-in">Sign in</ButtonLink>
    </Page>
  );
}
