import type { Metadata } from "next";
import { archivedCalls } from "@/features/calls/archived-data";
import { callPageHref } from "@/features/calls/call-pages";
import { ARCHIVED } from "@/features/calls/components/archived-link";
import { requireViewer } from "@/server/viewer";
import { Day } from "@/ui/day";
import { EmptyState } from "@/ui/empty-state";
import { LinkList } from "@/ui/link-list";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: ARCHIVED };

export default async function ArchivedPage() {
  const calls = await archivedCalls(await requireViewer());
  return (
    <Page title={ARCHIVED} intro="Everything in them can still be read. Nothing is sent for them.">
      {calls.length === 0 ? (
        <EmptyState title="Nothing is archived">
          <p>A test can be archived once it is closed, on its Progress page.</p>
        </EmptyState>
      ) : (
        <LinkList
          items={calls.map(({ callId, title, patternName, testers, archivedAt }) => ({
            ...{ href: callPageHref(callId, "overview"), name: title },
            says: (
              <>
                {patternName} · {testers === 1 ? "1 tester" : `${testers} testers`} · archived on{" "}
                <Day at={archivedAt} />
              </>
            ),
          }))}
        />
      )}
    </Page>
  );
}
