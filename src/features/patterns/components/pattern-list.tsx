import Link from "next/link";
import type { ReactNode } from "react";
import { ButtonLink } from "@/ui/button";
import { Day } from "@/ui/day";
import { EmptyState } from "@/ui/empty-state";
import { Sheet } from "@/ui/sheet";
import type { PatternSummary } from "../data";
import { GarmentThumb } from "../drawing/garment-thumb";
import { craftWord, sizesWords } from "../pattern-copy";

export function NewPatternLinks() {
  return (
    <>
      <ButtonLink href="/patterns/new/blank">New pattern</ButtonLink>
      <ButtonLink href="/patterns/new/template" look="plain">
        From a template
      </ButtonLink>
      <ButtonLink href="/patterns/new/paste" look="plain">
        Import from a spreadsheet
      </ButtonLink>
      <ButtonLink href="/patterns/new/document" look="plain">
        Import file
      </ButtonLink>
    </>
  );
}

export function NoPatterns() {
  return (
    <EmptyState title="No patterns yet" actions={<NewPatternLinks />}>
      <p>
        Begin with a garment template and have it graded, or create one from its sizes and a fabric. If you have graded
        it already, import the finished measurements from your spreadsheet, then your testers’ reports. You can also
        import a file exported from Sizewright.
      </p>
    </EmptyState>
  );
}

interface PatternListProps {
  readonly patterns: readonly PatternSummary[];
  /** The designer's photo of a pattern; null where there is none, and its drawing is shown. */
  readonly photoOf: (pattern: PatternSummary) => ReactNode;
}

export function PatternList({ patterns, photoOf }: PatternListProps) {
  return (
    <ul className="grid gap-5 lg:grid-cols-2">
      {patterns.map((pattern) => (
        <li key={pattern.patternId}>
          <PatternCard pattern={pattern} photo={photoOf(pattern)} />
        </li>
      ))}
    </ul>
  );
}

function PatternCard({ pattern, photo }: { readonly pattern: PatternSummary; readonly photo: ReactNode }) {
  const { name, craft, sizes } = pattern.document;
  return (
    <Sheet className="flex h-full flex-col">
      <div className="flex flex-col-reverse gap-x-6 gap-y-3 sm:flex-row sm:justify-between">
        <div className="min-w-0">
          <h2 className="text-xl wrap-anywhere">
            <Link href={`/patterns/${pattern.patternId}`} className="hover:text-thread hover:underline">
              {name}
            </Link>
          </h2>
          <p className="mt-1 text-soft">
            {craftWord(craft)}, {sizesWords(sizes.map(({ label }) => label))}
          </p>
          <p className="text-sm text-soft">
            Revision {pattern.revisionNumber}, <Day at={pattern.changedAt} />
            {pattern.role === "owner" ? null : pattern.role === "editor" ? " · you can edit" : " · view only"}
            {pattern.isDemo ? " · invented for the demo" : null}
          </p>
        </div>
        <div className="shrink-0">{photo ?? <GarmentThumb pattern={pattern.document} />}</div>
      </div>
      <div className="h-4 shrink-0" />
      <CallLinks pattern={pattern} />
    </Sheet>
  );
}

function CallLinks({ pattern }: { readonly pattern: PatternSummary }) {
  if (pattern.calls.length === 0) {
    return (
      <p className="mt-auto border-t border-line pt-3 text-soft">
        {pattern.archivedCalls === 0 ? "No reports yet." : "No test now; earlier ones are archived."}{" "}
        {pattern.role === "viewer" ? null : (
          <Link href={`/patterns/${pattern.patternId}/reports/paste`} className="text-link">
            Import reports
          </Link>
        )}
      </p>
    );
  }
  return (
    <ul className="mt-auto grid gap-1 border-t border-line pt-3">
      {pattern.calls.map(({ callId, title, testers }) => (
        <li key={callId} className="flex flex-wrap justify-between gap-x-4">
          <Link href={`/calls/${callId}`} className="text-link min-w-0 wrap-anywhere">
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
