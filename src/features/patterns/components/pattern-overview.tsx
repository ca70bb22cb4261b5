import Link from "next/link";
import type { ReactNode } from "react";
import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import { FabricCards } from "./fabric-cards";
import { FaultList } from "./fault-list";
import { FinishedTable } from "./finished-table";
import { ruleWarnings } from "../pattern-copy";
import { SanityList } from "./sanity-list";
import { AllowanceTable, BodyTable, CountTable, LengthTable, TieList } from "./pattern-tables";

interface PatternOverviewProps {
  readonly pattern: PatternDocument;
  readonly unit: LengthUnit;
  /** Address of the pattern; left out for an earlier revision, whose measurements have no links. */
  readonly home?: string;
}

/** All numbers of one revision. */
export function PatternOverview({ pattern, unit, home }: PatternOverviewProps) {
  const warnings = ruleWarnings(pattern);
  return (
    <>
      {warnings.length > 0 ? (
        <Notice title="Some numbers break the pattern’s own rules">
          <FaultList faults={warnings} />
        </Notice>
      ) : null}
      {pattern.measurements.length > 0 ? (
        <Section title="Finished measurements">
          <FinishedTable pattern={pattern} unit={unit} home={home} />
        </Section>
      ) : null}
      {pattern.counts.length > 0 ? (
        <Section title="Counts">
          <CountTable pattern={pattern} />
        </Section>
      ) : null}
      {pattern.ties.length > 0 ? (
        <Section title="Must add up">
          <TieList pattern={pattern} />
        </Section>
      ) : null}
      {(pattern.lengths ?? []).length > 0 ? (
        <Section title="Lengths">
          <LengthTable pattern={pattern} unit={unit} />
        </Section>
      ) : null}
      {pattern.allowances.length > 0 ? (
        <Section title="Edgings and seams">
          <AllowanceTable pattern={pattern} unit={unit} />
        </Section>
      ) : null}
      <Section title="Fabrics">
        <FabricCards fabrics={pattern.fabrics} />
      </Section>
      <Section title="Sizes">
        <BodyTable pattern={pattern} unit={unit} />
      </Section>
      {home === undefined ? null : <SanityList pattern={pattern} unit={unit} />}
      {pattern.instructions ? <Instructions text={pattern.instructions} /> : null}
    </>
  );
}

function Instructions({ text }: { readonly text: string }) {
  return (
    <Section title="Written instructions">
      <div className="max-w-3xl whitespace-pre-wrap wrap-anywhere">{text}</div>
    </Section>
  );
}

interface CallListProps {
  readonly patternId: string;
  readonly mayEdit: boolean;
  readonly calls: readonly { readonly callId: string; readonly title: string; readonly testers: number }[];
  /** The form for a new call. */
  readonly open: ReactNode;
}

/** The pattern's calls, each with a link to its results, and links to a new call and to more reports. */
export function CallList({ patternId, mayEdit, calls, open }: CallListProps) {
  const paste = `/patterns/${patternId}/reports/paste`;
  return (
    <Section
      title="Tests"
      actions={
        mayEdit ? (
          <div className="flex flex-wrap items-center gap-x-5 gap-y-2">
            {calls.length > 0 ? (
              <Link href={paste} className="text-link">
                Import more reports
              </Link>
            ) : null}
            {open}
          </div>
        ) : null
      }
    >
      {calls.length === 0 ? (
        <p className="text-soft">
          No tester has reported yet.{" "}
          {mayEdit ? (
            <Link href={paste} className="text-link">
              Import testers’ reports
            </Link>
          ) : null}
        </p>
      ) : (
        <ul className="grid gap-3 sm:grid-cols-2">
          {calls.map(({ callId, title, testers }) => (
            <li key={callId} className="rounded-sheet border border-line bg-sheet px-5 py-4 shadow-sheet">
              <Link href={`/calls/${callId}/differences`} className="text-link font-semibold wrap-anywhere">
                {title}
              </Link>
              <p className="text-soft">
                {testers === 1 ? "1 tester" : `${testers} testers`} ·{" "}
                <a href={`/calls/${callId}/export`} download className="text-link">
                  Export file
                </a>
              </p>
            </li>
          ))}
        </ul>
      )}
    </Section>
  );
}
