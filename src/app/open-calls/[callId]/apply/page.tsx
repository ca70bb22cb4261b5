import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import { askedOfApplicants } from "@/features/recruiting/applications/apply/asked-of-applicants";
import { ApplyForm } from "@/features/recruiting/applications/apply/apply-form-view";
import { ApplyIntro, CallLink } from "@/features/recruiting/applications/apply/apply-head";
import { loadApply } from "@/features/recruiting/applications/loaders";
import { Page } from "@/ui/page";

export async function generateMetadata({ params }: PageProps<"/open-calls/[callId]/apply">): Promise<Metadata> {
  const { opening } = await loadApply((await params).callId);
  return { title: opening === null ? "Apply to test" : `Apply to test · ${opening.title}` };
}

export default async function ApplyPage({ params }: PageProps<"/open-calls/[callId]/apply">) {
  const { callId } = await params;
  const { viewer, opening, notTaking } = await loadApply(callId);
  const { name = "", email = "", unit = "cm" } = viewer ?? {};
  return (
    <Page
      title="Apply to test"
      above={opening ? <CallLink opening={opening} /> : null}
      intro={opening ? <ApplyIntro opening={opening} /> : null}
      width="narrow"
    >
      <ApplyForm
        {...{ callId, notTaking }}
        designer={opening?.designer ?? ""}
        craft={opening?.pattern.craft ?? "crochet"}
        asked={opening === null ? null : askedOfApplicants(opening)}
        formKey={randomUUID()}
        prefilled={{ name: [name], email: [email], unit: [unit], terms: ["us"] }}
      />
    </Page>
  );
}
