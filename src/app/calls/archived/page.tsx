import type { Metadata } from "next";
import Link from "next/link";
import { archivedCalls } from "@/features/calls/archived-data";
import { callPageHref } from "@/features/calls/call-pages";
import { ARCHIVED } from "@/features/calls/components/archived-link";
import { requireViewer } from "@/server/viewer";
import { Day } from "@/ui/day";
import { EmptyState } from "@/ui/empty-state";
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
        <ul className="divide-y divide-line rounded-sheet border border-line bg-sheet shadow-sheet">
          {calls.map(({ callId, title, patternName, testers, archivedAt }) => (
            <li key={callId} className="flex flex-wrap items-baseline justify-between gap-x-6 px-5 py-3">
              <Link href={callPageHref(callId, "overview")} className="text-link min-w-0 font-semibold wrap-anywhere">
                {title}
              </Link>
              <p className="text-soft wrap-anywhere">
                {patternName} · {testers === 1 ? "1 tester" : `${testers} testers`} · archived on{" "}
                <Day at={archivedAt} />
              </p>
            </li>
          ))}
        </ul>
      )}
    </Page>
  );
}
