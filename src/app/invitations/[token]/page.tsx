import type { Metadata } from "next";
import { InvitationView } from "@/features/patterns/people/invitation-view";
import { loadInvitation } from "@/features/patterns/people/invitation-loaders";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Invitation", robots: { index: false, follow: false } };

export default async function InvitationPage({ params }: PageProps<"/invitations/[token]">) {
  const { token } = await params;
  const page = await loadInvitation(token);
  return (
    <Page title={page.state.status === "open" ? "You are invited" : "An invitation"} width="narrow">
      <InvitationView token={token} page={page} />
    </Page>
  );
}
