import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import Link from "next/link";
import { TemplateForm } from "@/features/patterns/new/template-form";
import { requireViewer } from "@/server/viewer";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "New pattern from a template" };

export default async function TemplatePage() {
  const { unit } = await requireViewer();
  return (
    <Page
      above={
        <Link className="text-link" href="/patterns">
          Your patterns
        </Link>
      }
      title="New pattern from a template"
      intro="Choose a garment, enter your gauge and check the sizes. You get a graded pattern with its drawing, and can change all of it."
    >
      <TemplateForm formKey={randomUUID()} unit={unit} />
    </Page>
  );
}
