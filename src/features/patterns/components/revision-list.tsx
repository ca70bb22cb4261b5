import Link from "next/link";
import { patternChanges } from "@/engine/editing";
import { Day } from "@/ui/day";
import type { Revision } from "../data";

/** All revisions, the newest first: who, when, why, and how much changed. */
export function RevisionList({ home, revisions }: { readonly home: string; readonly revisions: readonly Revision[] }) {
  return (
    <ol className="grid gap-4">
      {revisions.map((revision, index) => (
        <li key={revision.revisionId} className="rounded-sheet border border-line bg-sheet px-5 py-4 shadow-sheet">
          <p className="flex flex-wrap items-baseline justify-between gap-x-6">
            <Link href={`${home}/revisions/${revision.number}`} className="text-link font-semibold">
              Revision {revision.number}
            </Link>
            <span className="text-soft">
              <bdi>{revision.createdBy ?? "someone who has left"}</bdi>, <Day at={revision.createdAt} />
            </span>
          </p>
          <p className="mt-1 wrap-anywhere">{revision.reason}</p>
          <p className="mt-1 flex flex-wrap items-baseline justify-between gap-x-6 text-sm text-soft">
            {howMuch(revision, revisions[index + 1])}
            {index + 1 < revisions.length ? (
              <Link href={`${home}/revisions/compare?to=${revision.number}`} className="text-link py-1">
                Compare <span className="sr-only">revision {revision.number} </span>with another
              </Link>
            ) : null}
          </p>
        </li>
      ))}
    </ol>
  );
}

function howMuch(revision: Revision, before: Revision | undefined): string {
  if (before === undefined) return "The first revision.";
  const changes = patternChanges(before.document, revision.document).length;
  return changes === 1 ? "1 number changed" : `${changes} numbers changed`;
}
