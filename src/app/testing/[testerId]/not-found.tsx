import type { Metadata } from "next";
import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: { absolute: "Nothing here · Sizewright" } };

/** The same page for a test that does not exist, another tester's test, and one's own test in a browser without access. */
export default function NoTest() {
  return (
    <Page
      title="There is nothing here"
      intro="Either there is no test at this address, or this browser has no access to it. If it is your test, open your invitation link again, or sign in."
      width="narrow"
    >
      <ButtonLink href="/sign-in?next=/testing">Sign in</ButtonLink>
    </Page>
  );
}
