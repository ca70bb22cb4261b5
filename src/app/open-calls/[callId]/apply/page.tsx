import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import { askedOfApplicants } from "@/features/recruiting/applications/apply/asked-of-applicants";
import { ApplyFormView } from "@/features/recruiting/applications/apply/apply-form-view";
import { ApplyIntro, CallLink } from "@/features/recruiting/applications/apply/apply-intro";
import { loadApply } from "@/features/recruiting/applications/loaders";
import { Page } from "@/ui/page";

export async function generateMetadata({ params }: PageProps<"/open-calls/[callId]/apply">): Promise<Metadata> {
  const { listing } = await loadApply((await params).callId);
  return { title: listing === null ? "Apply to test" : `Apply to test · ${listing.title}` };
}

export default async function ApplyPage({ params }: PageProps<"/open-calls/[callId]/apply">) {
  const { callId } = await params;
  const { viewer, listing, notTaking } = await loadApply(callId);
  const { name = "", email = "", unit = "cm" } = viewer ?? {};
  return (
    <Page
      title="Apply to test"
      above={listing ? <CallLink listing={listing} /> : null}
      intro={listing ? <ApplyIntro listing={listing} /> : null}
      width="narrow"
    >
      <ApplyFormView
        {...{ callId, notTaking }}
        designer={listing?.designer ?? ""}
        craft={listing?.pattern.craft ?? "crochet"}
        asked={listing === null ? null : askedOfApplicants(listing)}
        formKey={randomUUID()}
        prefilled={{ name: [name], email: [email], unit: [unit], terms: ["us"] }}
      />
    </Page>
  );
}
