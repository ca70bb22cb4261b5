import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import Link from "next/link";
import { BringDocument } from "@/features/patterns/components/bring-document";
import { requireViewer } from "@/server/viewer";
import { Page } from "@/ui/page";
import { bringDocument } from "@/features/reports/document-actions";

export const metadata: Metadata = { title: "Bring a document" };

export default async function BringDocumentPage() {
  await requireViewer();
  return (
    <Page
      title="Bring a document"
      width="narrow"
      above={
        <Link href="/patterns" className="text-link">
          Patterns
        </Link>
      }
      intro="A pattern document, or a call document: the pattern together with its testers and what they reported. Either comes out of Sizewright under “Save as a document”."
    >
      <BringDocument formKey={randomUUID()} bring={bringDocument} />
    </Page>
  );
}
