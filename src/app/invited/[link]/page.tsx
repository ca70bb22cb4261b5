import type { Metadata } from "next";
import { InvitedView } from "@/features/testing/invited/invited-view";
import { loadInvited } from "@/features/testing/invited/invited-loaders";
import { Page } from "@/ui/page";

export const metadata: Metadata = {
  title: "Invitation to test",
  robots: { index: false, follow: false },
};

export default async function InvitedPage({ params }: PageProps<"/invited/[link]">) {
  const { link } = await params;
  const page = await loadInvited(link);
  const { isDemo, callTitle } = page.invited;
  const above = (
    <>
      <bdi>{callTitle}</bdi>
      {isDemo ? " · made up for the demo" : null}
    </>
  );
  const isOthers = page.state === "sign-in" || page.state === "another's";
  const title = page.state === "open" ? "You are invited to test" : "Invitation to test";
  return (
    <Page title={title} above={isOthers ? null : above} width="narrow">
      <InvitedView link={link} page={page} now={new Date()} />
    </Page>
  );
}
