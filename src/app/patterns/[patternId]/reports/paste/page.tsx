import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { openCalls } from "@/features/calls/data";
import { patternAccess } from "@/features/patterns/access";
import { loadPattern } from "@/features/patterns/loaders";
import { PasteReports } from "@/features/testing/report/import/paste-reports";
import { Page } from "@/ui/page";

const TITLE = "Import reports";

export async function generateMetadata({
  params,
}: PageProps<"/patterns/[patternId]/reports/paste">): Promise<Metadata> {
  const loaded = await loadPattern((await params).patternId).catch(() => null);
  return { title: loaded?.mayEdit ? TITLE : { absolute: `${TITLE} · Sizewright` } };
}

export default async function PasteReportsPage({
  params,
}: {
  readonly params: Promise<{ readonly patternId: string }>;
}) {
  const { patternId } = await params;
  const { viewer, revision, mayEdit } = await loadPattern(patternId);
  if (!mayEdit) notFound();
  const { document } = revision;
  const calls = await openCalls(await patternAccess(viewer, patternId, "editor"));
  return (
    <Page
      above={
        <Link className="text-link" href={`/patterns/${patternId}`}>
          {document.name}
        </Link>
      }
      title="What your testers reported"
      intro="The second table from your spreadsheet. Each tester’s own gauge and counts are taken into account, so that a loose gauge doesn’t look like a wrong size."
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
