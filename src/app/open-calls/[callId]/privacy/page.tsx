import type { Metadata } from "next";
import Link from "next/link";
import { loadOpenCall } from "@/features/recruiting/listing/loaders";
import { PrivacyNotice } from "@/features/recruiting/listing/privacy/privacy-notice";
import { environment } from "@/server/environment";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Privacy notice" };

export default async function PrivacyNoticePage({ params }: PageProps<"/open-calls/[callId]/privacy">) {
  const { listing } = await loadOpenCall((await params).callId);
  const { callId, title, designer, document } = listing;
  return (
    <Page
      title="Privacy notice"
      above={
        <Link href={`/open-calls/${callId}`} className="text-link">
          <bdi>{title}</bdi>
        </Link>
      }
      intro="What is stored about people who apply for this test and take part in it."
      width="narrow"
    >
      <PrivacyNotice designer={designer} facts={document.notice} site={new URL(environment().NEXTAUTH_URL).host} />
    </Page>
  );
}
