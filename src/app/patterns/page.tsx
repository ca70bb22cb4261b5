import type { Metadata } from "next";
import { NewPatternLinks, NoPatterns, PatternList } from "@/features/patterns/components/pattern-list";
import { loadPatterns } from "@/features/patterns/loaders";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Your patterns" };

export default async function PatternsPage() {
  const patterns = await loadPatterns();
  const isEmpty = patterns.length === 0;
  return (
    <Page title="Your patterns" actions={isEmpty ? null : <NewPatternLinks />}>
      {isEmpty ? <NoPatterns /> : <PatternList patterns={patterns} />}
    </Page>
  );
}
