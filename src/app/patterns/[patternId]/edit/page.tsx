import type { Metadata } from "next";
import { PatternEditor } from "@/features/patterns/components/pattern-editor";
import { PatternFrame } from "@/features/patterns/components/pattern-frame";
import { PatternOverview } from "@/features/patterns/components/pattern-overview";
import { loadEditing } from "@/features/patterns/loaders";
import { Notice } from "@/ui/notice";

interface Props {
  readonly params: Promise<{ readonly patternId: string }>;
}

export const metadata: Metadata = { title: "Edit" };

export default async function EditPage({ params }: Props) {
  const page = await loadEditing((await params).patternId);
  const { patternId, revision, viewer, draft, lateTyped, mayEdit } = page;
  if (!mayEdit) {
    return (
      <PatternFrame page={page} tab="edit">
        <Notice title="You may look at these numbers; the owner or an editor may change them" />
        <PatternOverview pattern={revision.document} unit={viewer.unit} home={`/patterns/${patternId}`} />
      </PatternFrame>
    );
  }
  const isOlder = draft !== null && draft.baseNumber < revision.number && Object.keys(draft.typed).length > 0;
  return (
    <PatternFrame page={page} tab="edit">
      {isOlder ? (
        <Notice title={`${revision.createdBy ?? "Somebody"} has saved revision ${revision.number} meanwhile`}>
          <p>
            These edits were begun on revision {draft.baseNumber}. They are kept, and now stand on top of the newest.
          </p>
        </Notice>
      ) : null}
      <PatternEditor
        key={`${revision.number} ${draft?.version ?? 0} ${lateTyped === null ? "" : "late"}`}
        patternId={patternId}
        pattern={revision.document}
        baseNumber={revision.number}
        unit={viewer.unit}
        draft={{ typed: draft?.typed ?? {}, version: draft?.version ?? 0, by: draft?.updatedBy ?? revision.createdBy }}
        lateTyped={lateTyped}
      />
    </PatternFrame>
  );
}
