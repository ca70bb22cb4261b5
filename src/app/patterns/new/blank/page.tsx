import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import Link from "next/link";
import { BeginPattern } from "@/features/patterns/components/begin-pattern";
import { requireViewer } from "@/server/viewer";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Begin a pattern" };

export default async function BeginPatternPage() {
  const { unit } = await requireViewer();
  return (
    <Page
      above={
        <Link className="text-link" href="/patterns">
          Your patterns
        </Link>
      }
      title="Begin a pattern"
      intro="Its name, its sizes and one fabric are enough. Counts, pieces and measurements come next."
    >
      <BeginPattern formKey={randomUUID()} unit={unit} />
    </Page>
  );
}
