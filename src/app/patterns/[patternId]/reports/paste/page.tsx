import type { Metadata } from "next";
import Link from "next/link";
import { openCalls } from "@/features/calls/data";
import { patternAccess } from "@/features/patterns/access";
import { latestRevision } from "@/features/patterns/data";
import { PasteReports } from "@/features/reports/components/paste-reports";
import { foundOr404 } from "@/server/found-or-404";
import { requireViewer } from "@/server/viewer";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Paste reports" };

export default async function PasteReportsPage({
  params,
}: {
  readonly params: Promise<{ readonly patternId: string }>;
}) {
  const { patternId } = await params;
  const viewer = await requireViewer();
  const access = await foundOr404(patternAccess(viewer, patternId, "editor"));
  const [{ document }, calls] = await Promise.all([latestRevision(access), openCalls(access)]);
  return (
    <Page
      above={
        <Link className="text-link" href={`/patterns/${patternId}`}>
          {document.name}
        </Link>
      }
      title="What your testers reported"
      intro="The second table. Each tester’s own gauge and counts are taken out first, so that a loose hand is not blamed on a size."
    >
      <PasteReports
        patternId={patternId}
        pattern={document}
        calls={calls.map(({ callId, title, testers }) => ({ callId, title, testers }))}
        keptUnder={`${viewer.accountId} ${patternId}`}
      />
    </Page>
  );
}
