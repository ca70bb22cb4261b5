import type { Metadata } from "next";
import { patternAccess } from "@/features/patterns/access";
import { PatternFrame } from "@/features/patterns/components/pattern-frame";
import { loadPattern } from "@/features/patterns/loaders";
import { publishedVersions } from "@/features/patterns/published-data";
import { readErrata } from "@/features/testing/errata/errata-data";
import { ErrataView } from "@/features/testing/errata/errata-view";

export const metadata: Metadata = { title: "Errata" };

export default async function ErrataPage({ params }: PageProps<"/patterns/[patternId]/errata">) {
  const page = await loadPattern((await params).patternId);
  const { viewer, patternId, revision } = page;
  const pattern = revision.document;
  const access = await patternAccess(viewer, patternId, "viewer");
  const [versions, errata] = await Promise.all([publishedVersions(access), readErrata(access, { pattern })]);
  return (
    <PatternFrame page={page} tab="errata">
      <ErrataView home={`/patterns/${patternId}`} patternName={pattern.name} {...{ versions, errata }} />
    </PatternFrame>
  );
}
