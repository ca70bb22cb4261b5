import type { Metadata } from "next";
import Link from "next/link";
import { patternAccess } from "@/features/patterns/access";
import { patternDeletion } from "@/features/testing/pattern-deletion/pattern-deletion-data";
import { PatternDeletionView } from "@/features/testing/pattern-deletion/pattern-deletion-view";
import { foundOr404 } from "@/server/found-or-404";
import { requireViewer } from "@/server/viewer";
import { Page } from "@/ui/page";

const TITLE = "Delete this pattern";

export const metadata: Metadata = { title: TITLE };

export default async function DeletePatternPage({ params }: PageProps<"/patterns/[patternId]/delete">) {
  const { patternId } = await params;
  const viewer = await requireViewer();
  const deletion = await foundOr404(patternAccess(viewer, patternId, "owner").then(patternDeletion));
  return (
    <Page
      title={TITLE}
      above={
        <Link href={`/patterns/${patternId}`} className="text-link">
          {deletion.pattern.name}
        </Link>
      }
    >
      <PatternDeletionView deletion={deletion} />
    </Page>
  );
}
