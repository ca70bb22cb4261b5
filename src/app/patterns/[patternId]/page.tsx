import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import { patternStandings } from "@/features/calls/standing-data";
import { patternAccess } from "@/features/patterns/access";
import { NewCall } from "@/features/recruiting/listing/set-up/new-call";
import { PatternFrame } from "@/features/patterns/components/pattern-frame";
import { CallList, PatternOverview } from "@/features/patterns/components/pattern-overview";
import { CorrectedSizes } from "@/features/patterns/follow-up/corrected-sizes";
import { openInstructionFixes, tickedOffFixes } from "@/features/patterns/follow-up/instruction-fix-data";
import { InstructionFixList } from "@/features/patterns/follow-up/instruction-fix-list";
import { TickedOffFixes } from "@/features/patterns/follow-up/ticked-off-fixes";
import { correctedSizeStandings } from "@/features/patterns/follow-up/retest-data";
import { ArchivedNotice } from "@/features/patterns/owner/archived-notice";
import { OwnerControls } from "@/features/patterns/owner/owner-controls";
import { loadOverview, loadPattern } from "@/features/patterns/loaders";
import { ButtonLink } from "@/ui/button";
import { Notice } from "@/ui/notice";
import { PatternLead } from "./pattern-lead";

interface Props {
  readonly params: Promise<{ readonly patternId: string }>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { revision } = await loadPattern((await params).patternId);
  return { title: revision.document.name };
}

export default async function PatternPage({ params }: Props) {
  const page = await loadOverview((await params).patternId);
  const { patternId, viewer, mayEdit, isOwner, archivedAt, revision, calls, archivedCalls, draft } = page;
  const access = await patternAccess(viewer, patternId, "viewer");
  const pattern = revision.document;
  const [standings, fixes, tickedOff, corrected] = await Promise.all([
    patternStandings(access),
    openInstructionFixes(access, pattern),
    tickedOffFixes(access),
    correctedSizeStandings(access, pattern),
  ]);
  const formKey = randomUUID();
  const home = `/patterns/${patternId}`;
  const hasDraft = draft !== null && draft.content !== null;
  return (
    <PatternFrame
      page={page}
      tab="overview"
      actions={
        <>
          <a href={`${home}/export`} download className="text-link">
            Export file
          </a>
          {mayEdit ? (
            <ButtonLink href={`${home}/edit`} look="quiet">
              Edit pattern
            </ButtonLink>
          ) : null}
        </>
      }
    >
      <ArchivedNotice page={page} />
      {hasDraft ? (
        <Notice title="There are unsaved edits">
          <p>This page shows revision {revision.number}, without them. Continue under “Edit”.</p>
        </Notice>
      ) : null}
      <PatternLead
        {...{ page, standings, archivedCalls }}
        newTest={archivedAt === null ? <NewCall {...{ patternId, formKey }} look="main" /> : null}
      />
      {calls.length === 0 ? null : (
        <CallList
          {...{ patternId, mayEdit, calls }}
          open={archivedAt === null ? <NewCall {...{ patternId, formKey }} /> : null}
        />
      )}
      <InstructionFixList {...{ patternId, pattern, fixes, mayEdit }} />
      <TickedOffFixes {...{ patternId, pattern, mayEdit }} fixes={tickedOff} />
      <CorrectedSizes {...{ patternId, pattern, mayEdit }} standings={corrected} ownName={viewer.name} />
      <PatternOverview pattern={pattern} unit={viewer.unit} home={home} />
      {isOwner ? (
        <OwnerControls page={page} formKey={randomUUID()} hasOpenTest={standings.some(({ isOpen }) => isOpen)} />
      ) : null}
    </PatternFrame>
  );
}
