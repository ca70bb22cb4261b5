import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import Link from "next/link";
import { askedOfApplicants } from "@/features/applications/asked-of-applicants";
import { ApplyForm } from "@/features/applications/components/apply/apply-form-view";
import { loadApply } from "@/features/applications/loaders";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Apply to test" };

export default async function ApplyPage({ params }: PageProps<"/open-calls/[callId]/apply">) {
  const { callId } = await params;
  const { viewer, opening, notTaking } = await loadApply(callId);
  const { name = "", email = "", unit = "cm" } = viewer ?? {};
  return (
    <Page
      title="Apply to test"
      above={
        <Link href={`/open-calls/${callId}`} className="text-link">
          <bdi>{opening.title}</bdi>
        </Link>
      }
      intro={
        <>
          <bdi>{opening.pattern.name}</bdi>, a call by <bdi>{opening.designer}</bdi>
        </>
      }
      width="narrow"
    >
      <ApplyForm
        {...{ callId, notTaking }}
        designer={opening.designer}
        craft={opening.pattern.craft}
        asked={askedOfApplicants(opening)}
        formKey={randomUUID()}
        prefilled={{ name: [name], email: [email], unit: [unit], terms: ["us"] }}
      />
    </Page>
  );
}
