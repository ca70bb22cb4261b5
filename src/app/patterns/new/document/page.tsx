import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import Link from "next/link";
import { ImportFile } from "@/features/patterns/import/import-file";
import { requireViewer } from "@/server/viewer";
import { Page } from "@/ui/page";
import { importDocument } from "@/features/testing/report/import/document-actions";

export const metadata: Metadata = { title: "Import file" };

export default async function ImportFilePage() {
  await requireViewer();
  return (
    <Page
      title="Import file"
      width="narrow"
      above={
        <Link href="/patterns" className="text-link">
          Your patterns
        </Link>
      }
      intro="A file exported from Sizewright with “Export file”: a pattern, or a test with its pattern, testers and reports."
    >
      <ImportFile formKey={randomUUID()} bring={importDocument} />
    </Page>
  );
}
