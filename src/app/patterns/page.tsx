import type { Metadata } from "next";
import { ArchivedPatternsLink } from "@/features/patterns/owner/archived-link";
import { ArchivedLink } from "@/features/calls/components/archived-link";
import { NewPatternLinks, NoPatterns } from "@/features/patterns/components/pattern-list";
import { loadPatterns } from "@/features/patterns/loaders";
import { PatternCards } from "@/app/pattern-cards";
import { requireViewer } from "@/server/viewer";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Your patterns" };

export default async function PatternsPage() {
  const patterns = await loadPatterns();
  const isEmpty = patterns.length === 0;
  return (
    <Page title="Your patterns" actions={isEmpty ? null : <NewPatternLinks />}>
      {isEmpty ? <NoPatterns /> : <PatternCards patterns={patterns} />}
      <p className="mt-6 flex flex-wrap gap-x-6 gap-y-2">
        <ArchivedPatternsLink viewer={await requireViewer()} />
        <ArchivedLink patterns={patterns} />
      </p>
    </Page>
  );
}
