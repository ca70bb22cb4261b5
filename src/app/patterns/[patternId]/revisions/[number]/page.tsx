import type { Metadata } from "next";
import Link from "next/link";
import { patternChanges } from "@/engine/editing";
import { RevisionEvidence } from "@/features/results/changes/revision-evidence";
import { loadEvidence } from "@/features/results/loaders";
import { ChangeList } from "@/features/patterns/components/change-list";
import { PatternFrame } from "@/features/patterns/components/pattern-frame";
import { PatternOverview } from "@/features/patterns/components/pattern-overview";
import { patternAccess } from "@/features/patterns/access";
import { correctedSizeStandings } from "@/features/patterns/follow-up/retest-data";
import { RetestNotice } from "@/features/patterns/follow-up/retest-notice";
import { loadRevision } from "@/features/patterns/loaders";
import { publishedVersions } from "@/features/patterns/published-data";
import { CorrectionList } from "@/features/testing/errata/correction-list";
import { correctionsIn } from "@/features/testing/errata/errata-data";
import { PublishSection } from "@/features/testing/errata/publish-section";
import { Day } from "@/ui/day";
import { Section } from "@/ui/section";

interface Props {
  readonly params: Promise<{ readonly patternId: string; readonly number: string }>;
}

export const metadata: Metadata = { title: "Revision" };

export default async function RevisionPage({ params }: Props) {
  const { patternId, number } = await params;
  const page = await loadRevision(patternId, number);
  const { read, before, viewer, mayEdit } = page;
  const access = await patternAccess(viewer, patternId, "viewer");
  const [evidence, versions, corrections, standings] = await Promise.all([
    loadEvidence(patternId, read.number),
    publishedVersions(access),
    correctionsIn(access, { revisionId: read.revisionId, pattern: read.document }),
    correctedSizeStandings(access, read.document),
  ]);
  const corrected = standings.filter(({ revisionNumber }) => revisionNumber <= read.number);
  return (
    <PatternFrame page={page} tab="revisions">
      <Section
        title={`Revision ${read.number}${read.number === page.revision.number ? ", the newest" : ""}`}
        intro={
          <>
            <p className="whitespace-pre-line wrap-anywhere text-ink">{read.reason}</p>
            <p className="wrap-anywhere">
              <bdi>{read.createdBy ?? "Someone who has left"}</bdi>, <Day at={read.createdAt} />
            </p>
          </>
        }
        actions={
          <a href={`/patterns/${patternId}/export?revision=${read.number}`} download className="text-link">
            Export file
          </a>
        }
      >
        <RetestNotice pattern={read.document} standings={corrected} />
        <PublishSection {...{ patternId, versions, mayEdit }} revisionNumber={read.number} />
        {before ? (
          <>
            <div className="mb-3 flex flex-wrap items-baseline justify-between gap-x-6 gap-y-1">
              <h3>What changed from revision {before.number}</h3>
              <Link
                href={`/patterns/${patternId}/revisions/compare?from=${before.number}&to=${read.number}`}
                className="text-link"
              >
                Compare them by size
              </Link>
            </div>
            <ChangeList changes={patternChanges(before.document, read.document)} unit={viewer.unit} />
          </>
        ) : null}
        {corrections.length === 0 ? null : (
          <div className="mt-6">
            <h3 className="mb-3">Corrections from the test</h3>
            <CorrectionList corrections={corrections} />
          </div>
        )}
      </Section>
      {evidence && before ? <RevisionEvidence evidence={evidence} before={before.document} unit={viewer.unit} /> : null}
      <PatternOverview pattern={read.document} unit={viewer.unit} />
    </PatternFrame>
  );
}
