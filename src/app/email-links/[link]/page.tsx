import type { Metadata } from "next";
import { loadEmailLink } from "@/features/accounts/email-links/email-link-loaders";
import { EmailLinkView } from "@/features/accounts/email-links/email-link-view";

export const metadata: Metadata = { title: "Your link", robots: { index: false, follow: false } };

export default async function EmailLinkRoute({ params }: PageProps<"/email-links/[link]">) {
  const { link } = await params;
  return <EmailLinkView link={link} page={await loadEmailLink(link)} />;
}
