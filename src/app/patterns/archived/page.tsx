import type { Metadata } from "next";
import Link from "next/link";
import { ARCHIVED_PATTERNS } from "@/features/patterns/owner/archived-link";
import { archivedPatterns } from "@/features/patterns/owner/archived-data";
import { requireViewer } from "@/server/viewer";
import { Day } from "@/ui/day";
import { EmptyState } from "@/ui/empty-state";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: ARCHIVED_PATTERNS };

export default async function ArchivedPatternsPage() {
  const patterns = await archivedPatterns(await requireViewer());
  return (
    <Page title={ARCHIVED_PATTERNS} intro="Everything in them and in their tests can still be read.">
      {patterns.length === 0 ? (
        <EmptyState title="Nothing is archived">
          <p>A pattern can be archived once its tests are closed, at the end of its own page.</p>
        </EmptyState>
      ) : (
        <ul className="divide-y divide-line rounded-sheet border border-line bg-sheet shadow-sheet">
          {patterns.map(({ patternId, name, tests, archivedAt }) => (
            <li key={patternId} className="flex flex-wrap items-baseline justify-between gap-x-6 px-5 py-3">
              <Link href={`/patterns/${patternId}`} className="text-link min-w-0 font-semibold wrap-anywhere">
                {name}
              </Link>
              <p className="text-soft">
                {tests === 1 ? "1 test" : `${tests} tests`} · archived on <Day at={archivedAt} />
              </p>
            </li>
          ))}
        </ul>
      )}
    </Page>
  );
}
