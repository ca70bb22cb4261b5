import type { Metadata } from "next";
import Link from "next/link";
import { patternAccess } from "@/features/patterns/access";
import { loadPattern } from "@/features/patterns/loaders";
import { patternDeletion } from "@/features/testing/pattern-deletion/pattern-deletion-data";
import { PatternDeletionView } from "@/features/testing/pattern-deletion/pattern-deletion-view";
import { Notice } from "@/ui/notice";
import { Page } from "@/ui/page";

const TITLE = "Delete this pattern";

export const metadata: Metadata = { title: TITLE };

export default async function DeletePatternPage({ params }: PageProps<"/patterns/[patternId]/delete">) {
  const { patternId } = await params;
  const { viewer, isOwner, revision } = await loadPattern(patternId);
  return (
    <Page
      title={TITLE}
      above={
        <Link href={`/patterns/${patternId}`} className="text-link">
          {revision.document.name}
        </Link>
      }
    >
      {isOwner ? (
        <PatternDeletionView deletion={await patternDeletion(await patternAccess(viewer, patternId, "owner"))} />
      ) : (
        <Notice title="Only its owner can delete a pattern" />
      )}
    </Page>
  );
}
