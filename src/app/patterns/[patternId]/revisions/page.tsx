import type { Metadata } from "next";
import { PatternFrame } from "@/features/patterns/components/pattern-frame";
import { RevisionList } from "@/features/patterns/components/revision-list";
import { loadRevisions } from "@/features/patterns/loaders";

interface Props {
  readonly params: Promise<{ readonly patternId: string }>;
}

export const metadata: Metadata = { title: "Revisions" };

export default async function RevisionsPage({ params }: Props) {
  const page = await loadRevisions((await params).patternId);
  return (
    <PatternFrame page={page} tab="revisions">
      <RevisionList home={`/patterns/${page.patternId}`} {...{ revisions: page.revisions, versions: page.versions }} />
    </PatternFrame>
  );
}
