import type { Metadata } from "next";
import Link from "next/link";
import { PasteMeasurements } from "@/features/patterns/import/paste-measurements";
import { requireViewer } from "@/server/viewer";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Import from a spreadsheet" };

export default async function PasteMeasurementsPage() {
  const { accountId } = await requireViewer();
  return (
    <Page
      above={
        <Link className="text-link" href="/patterns">
          Your patterns
        </Link>
      }
      title="Import from a spreadsheet"
      intro="Paste two tables to see which sizes come out as planned. This is the first: what each size should measure."
    >
      <PasteMeasurements keptUnder={accountId} />
    </Page>
  );
}
