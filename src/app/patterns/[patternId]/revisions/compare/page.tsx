import type { Metadata } from "next";
import { CompareView } from "@/features/patterns/compare/compare-view";
import { PatternFrame } from "@/features/patterns/components/pattern-frame";
import { loadComparison } from "@/features/patterns/compare/compare-loaders";

export const metadata: Metadata = { title: "Compare revisions" };

export default async function ComparePage({
  params,
  searchParams,
}: PageProps<"/patterns/[patternId]/revisions/compare">) {
  const { from, to } = await searchParams;
  const asked = { from: from?.toString(), to: to?.toString() };
  const page = await loadComparison((await params).patternId, asked);
  return (
    <PatternFrame page={page} tab="revisions">
      <CompareView page={page} />
    </PatternFrame>
  );
}
