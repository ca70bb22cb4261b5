import Link from "next/link";
import { patternChanges } from "@/engine/editing";
import { Day } from "@/ui/day";
import type { Revision } from "../data";
import type { PublishedVersion } from "../published-data";

interface RevisionListProps {
  readonly home: string;
  readonly revisions: readonly Revision[];
  readonly versions: readonly PublishedVersion[];
}

/** All revisions, the newest first: who, when, why, and how much changed. */
export function RevisionList({ home, revisions, versions }: RevisionListProps) {
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
          <p className="mt-1 whitespace-pre-line wrap-anywhere">{revision.reason}</p>
          <PublishedAs version={versions.find(({ revisionNumber }) => revisionNumber === revision.number)} />
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

function PublishedAs({ version }: { readonly version: PublishedVersion | undefined }) {
  if (version === undefined) return null;
  return (
    <p className="mt-1 font-semibold wrap-anywhere">
      Published as version {version.label}, <Day at={version.publishedAt} />
    </p>
  );
}

function howMuch(revision: Revision, before: Revision | undefined): string {
  if (before === undefined) return "The first revision.";
  const changes = patternChanges(before.document, revision.document).length;
  return changes === 1 ? "1 number changed" : `${changes} numbers changed`;
}
