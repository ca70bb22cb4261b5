import type { Metadata } from "next";
import { askGrading, stopGrading } from "@/features/patterns/grading/actions";
import { ConflictingEdits } from "@/features/patterns/editor/conflicting-edits";
import { PatternEditor } from "@/features/patterns/editor/pattern-editor";
import { patternAccess } from "@/features/patterns/access";
import { openCorrections } from "@/features/testing/corrections/correction-data";
import { OpenCorrections } from "@/features/testing/corrections/open-corrections";
import { openInstructionFixes } from "@/features/patterns/follow-up/instruction-fix-data";
import { InstructionFixList } from "@/features/patterns/follow-up/instruction-fix-list";
import { PatternFrame } from "@/features/patterns/components/pattern-frame";
import { PatternOverview } from "@/features/patterns/components/pattern-overview";
import { loadEditing } from "@/features/patterns/loaders";
import { Notice } from "@/ui/notice";

interface Props {
  readonly params: Promise<{ readonly patternId: string }>;
}

const GRADINGS = { ask: askGrading, stop: stopGrading };

export const metadata: Metadata = { title: "Edit" };

export default async function EditPage({ params }: Props) {
  const page = await loadEditing((await params).patternId);
  const { patternId, revision, viewer, draft, late, mayEdit } = page;
  if (!mayEdit) {
    return (
      <PatternFrame page={page} tab="edit">
        <Notice title="You can see these numbers. Only the owner or an editor can change them" />
        <PatternOverview pattern={revision.document} unit={viewer.unit} home={`/patterns/${patternId}`} />
      </PatternFrame>
    );
  }
  const access = await patternAccess(viewer, patternId, "editor");
  const [open, fixes] = await Promise.all([openCorrections(access), openInstructionFixes(access, revision.document)]);
  const start = {
    patternId,
    base: revision.document,
    baseNumber: revision.number,
    unit: viewer.unit,
    version: draft?.version ?? 0,
  };
  const content = draft?.content ?? null;
  return (
    <PatternFrame page={page} tab="edit">
      <OpenCorrections calls={open} />
      <InstructionFixList pattern={revision.document} {...{ patternId, fixes, mayEdit }} />
      {content !== null && draft !== null && draft.baseNumber < revision.number ? (
        <Notice title={`${revision.createdBy ?? "Someone"} has saved revision ${revision.number} in the meantime`}>
          <p>
            Your edits started from revision {draft.baseNumber}. They are still here, now applied to the newest
            revision.
          </p>
        </Notice>
      ) : null}
      {late === null ? (
        <PatternEditor key={`${revision.number} ${start.version}`} {...start} content={content} gradings={GRADINGS} />
      ) : (
        <ConflictingEdits
          {...start}
          own={late.content}
          theirs={content}
          theirName={draft?.updatedBy ?? revision.createdBy}
        />
      )}
    </PatternFrame>
  );
}
