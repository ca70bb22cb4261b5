import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import Link from "next/link";
import { NewPatternForm } from "@/features/patterns/new/new-pattern-form";
import { requireViewer } from "@/server/viewer";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "New pattern" };

export default async function BeginPatternPage() {
  const { unit } = await requireViewer();
  return (
    <Page
      above={
        <Link className="text-link" href="/patterns">
          Your patterns
        </Link>
      }
      title="New pattern"
      intro="Start with a name, the sizes and one fabric. Stitch counts, pieces and measurements come next."
    >
      <p className="mb-6">
        Or{" "}
        <Link className="text-link" href="/patterns/new/template">
          begin with a garment template
        </Link>{" "}
        and have it graded at once.
      </p>
      <NewPatternForm formKey={randomUUID()} unit={unit} />
    </Page>
  );
}
