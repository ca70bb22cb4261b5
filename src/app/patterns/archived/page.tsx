import type { Metadata } from "next";
import { ARCHIVED_PATTERNS } from "@/features/patterns/owner/archived-link";
import { archivedPatterns } from "@/features/patterns/owner/archived-data";
import { requireViewer } from "@/server/viewer";
import { Day } from "@/ui/day";
import { EmptyState } from "@/ui/empty-state";
import { LinkList } from "@/ui/link-list";
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
        <LinkList
          items={patterns.map(({ patternId, name, tests, archivedAt }) => ({
            ...{ href: `/patterns/${patternId}`, name },
            says: (
              <>
                {tests === 1 ? "1 test" : `${tests} tests`} · archived on <Day at={archivedAt} />
              </>
            ),
          }))}
        />
      )}
    </Page>
  );
}
