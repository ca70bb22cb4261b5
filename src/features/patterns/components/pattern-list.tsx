import Link from "next/link";
import { ButtonLink } from "@/ui/button";
import { Day } from "@/ui/day";
import { EmptyState } from "@/ui/empty-state";
import { Sheet } from "@/ui/sheet";
import type { PatternSummary } from "../data";
import { craftWord } from "../pattern-copy";

export function NewPatternLinks() {
  return (
    <>
      <ButtonLink href="/patterns/new/blank">New pattern</ButtonLink>
      <ButtonLink href="/patterns/new/paste" look="quiet">
        Import from a spreadsheet
      </ButtonLink>
      <ButtonLink href="/patterns/new/document" look="quiet">
        Import file
      </ButtonLink>
    </>
  );
}

export function NoPatterns() {
  return (
    <EmptyState title="No patterns yet" actions={<NewPatternLinks />}>
      <p>
        Create one from its sizes and a fabric. If you have graded it already, import the finished measurements from
        your spreadsheet, then your testers’ reports. You can also import a file exported from Sizewright.
      </p>
    </EmptyState>
  );
}

export function PatternList({ patterns }: { readonly patterns: readonly PatternSummary[] }) {
  return (
    <ul className="grid gap-5 lg:grid-cols-2">
      {patterns.map((pattern) => (
        <li key={pattern.patternId}>
          <PatternCard pattern={pattern} />
        </li>
      ))}
    </ul>
  );
}

function PatternCard({ pattern }: { readonly pattern: PatternSummary }) {
  return (
    <Sheet className="h-full">
      <h2 className="wrap-anywhere">
        <Link href={`/patterns/${pattern.patternId}`} className="hover:text-thread hover:underline">
          {pattern.name}
        </Link>
      </h2>
      <p className="mt-1 text-soft">
        {craftWord(pattern.craft)} · revision {pattern.revisionNumber}, <Day at={pattern.changedAt} />
        {pattern.role === "owner" ? null : pattern.role === "editor" ? " · you can edit" : " · view only"}
      </p>
      <ul aria-label="Sizes" className="numbers mt-3 flex flex-wrap gap-x-1 gap-y-1.5 text-sm">
        {pattern.sizes.map((size, index) => (
          <li key={index} className="max-w-full rounded border border-line px-2 wrap-anywhere">
            {size}
          </li>
        ))}
      </ul>
      {pattern.isDemo ? <p className="mt-3 text-sm text-soft">Demo, invented</p> : null}
      <CallLinks pattern={pattern} />
    </Sheet>
  );
}

function CallLinks({ pattern }: { readonly pattern: PatternSummary }) {
  if (pattern.calls.length === 0) {
    return (
      <p className="mt-4 border-t border-line pt-3 text-soft">
        No reports yet.{" "}
        {pattern.role === "viewer" ? null : (
          <Link href={`/patterns/${pattern.patternId}/reports/paste`} className="text-link">
            Import reports
          </Link>
        )}
      </p>
    );
  }
  return (
    <ul className="mt-4 grid gap-1 border-t border-line pt-3">
      {pattern.calls.map(({ callId, title, testers }) => (
        <li key={callId} className="flex flex-wrap justify-between gap-x-4">
          <Link href={`/calls/${callId}/differences`} className="text-link min-w-0 wrap-anywhere">
            {title}
          </Link>
          <span className="text-soft">{testersWords(testers)}</span>
        </li>
      ))}
    </ul>
  );
}

/** `25 testers`. */
function testersWords(testers: number): string {
  return testers === 1 ? "1 tester" : `${testers} testers`;
}
