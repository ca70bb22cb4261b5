import type { Metadata } from "next";
import Link from "next/link";
import { PasteMeasurements } from "@/features/patterns/components/paste-measurements";
import { requireViewer } from "@/server/viewer";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Paste a graded pattern" };

export default async function PasteMeasurementsPage() {
  const { accountId } = await requireViewer();
  return (
    <Page
      above={
        <Link className="text-link" href="/patterns">
          Your patterns
        </Link>
      }
      title="Bring a graded pattern"
      intro="Two tables from your spreadsheet, and you read which sizes came out as promised. This is the first: what each size should measure."
    >
      <PasteMeasurements keptUnder={accountId} />
    </Page>
  );
}
