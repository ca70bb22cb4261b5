import type { Metadata } from "next";
import { patternChanges } from "@/engine/editing";
import { RevisionEvidence } from "@/features/analyses/components/revision-evidence";
import { loadEvidence } from "@/features/analyses/loaders";
import { ChangeList } from "@/features/patterns/components/change-list";
import { PatternFrame } from "@/features/patterns/components/pattern-frame";
import { PatternOverview } from "@/features/patterns/components/pattern-overview";
import { loadRevision } from "@/features/patterns/loaders";
import { Day } from "@/ui/day";
import { Section } from "@/ui/section";

interface Props {
  readonly params: Promise<{ readonly patternId: string; readonly number: string }>;
}

export const metadata: Metadata = { title: "Revision" };

export default async function RevisionPage({ params }: Props) {
  const { patternId, number } = await params;
  const page = await loadRevision(patternId, number);
  const { read, before, viewer } = page;
  const evidence = await loadEvidence(patternId, read.number);
  return (
    <PatternFrame page={page} tab="revisions">
      <Section
        title={`Revision ${read.number}${read.number === page.revision.number ? ", the newest" : ""}`}
        intro={
          <>
            <p className="wrap-anywhere text-ink">{read.reason}</p>
            <p>
              {read.createdBy ?? "Somebody who has left"}, <Day at={read.createdAt} />
            </p>
          </>
        }
        actions={
          <a href={`/patterns/${patternId}/export?revision=${read.number}`} download className="text-link">
            Save as a document
          </a>
        }
      >
        {before ? (
          <>
            <h3 className="mb-3">What changed from revision {before.number}</h3>
            <ChangeList changes={patternChanges(before.document, read.document)} unit={viewer.unit} />
          </>
        ) : null}
      </Section>
      {evidence && before ? <RevisionEvidence evidence={evidence} before={before.document} unit={viewer.unit} /> : null}
      <PatternOverview pattern={read.document} unit={viewer.unit} />
    </PatternFrame>
  );
}
