import type { Metadata } from "next";
import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: { absolute: "Nothing here · Sizewright" } };

/** The same for what is absent, for another tester's, and for her own in a browser that was not let in. */
export default function NoTest() {
  return (
    <Page
      title="There is nothing here"
      intro="Either there is no test at this address, or this browser is not let in to it. If it is yours, open the link of your invitation once more, or sign in."
      width="narrow"
    >
      <ButtonLink href="/sign-in?next=/testing">Sign in</ButtonLink>
    </Page>
  );
}
