import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { isMailOn } from "@/features/mail/mail-status";
import { LostLinkForm } from "@/features/testing/lost-links/lost-link-form";
import { optionalViewer } from "@/server/viewer";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Get your links again" };

export default async function LostLinkPage() {
  // Whether mail is on is known once a request is there.
  await optionalViewer();
  if (!isMailOn()) notFound();
  return (
    <Page
      title="Get your links again"
      intro="You take part in a test or have applied, and lost the link to your page? Enter the address that you gave there."
      width="narrow"
    >
      <LostLinkForm />
    </Page>
  );
}
