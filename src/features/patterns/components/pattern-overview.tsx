import Link from "next/link";
import type { ReactNode } from "react";
import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { Fold } from "@/ui/fold";
import { Notice } from "@/ui/notice";
import { LinkList } from "@/ui/link-list";
import { Section } from "@/ui/section";
import { FabricCards } from "./fabric-cards";
import { FaultList } from "./fault-list";
import { FinishedTable } from "./finished-table";
import { ruleWarnings } from "../pattern-copy";
import { SanityList } from "./sanity-list";
import { WrittenInstructions } from "./written-instructions";
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
      {home === undefined ? null : <SanityList pattern={pattern} unit={unit} />}
      <div className="mb-12">
        <MoreNumbers {...{ pattern, unit }} />
      </div>
    </>
  );
}

/** What is looked up now and then, each part closed. */
function MoreNumbers({ pattern, unit }: Pick<PatternOverviewProps, "pattern" | "unit">) {
  const { counts, ties, lengths = [], allowances, fabrics, instructions } = pattern;
  return (
    <>
      {counts.length > 0 ? (
        <Fold title="Counts">
          <CountTable pattern={pattern} />
        </Fold>
      ) : null}
      {ties.length > 0 ? (
        <Fold title="Must add up">
          <TieList pattern={pattern} />
        </Fold>
      ) : null}
      {lengths.length > 0 ? (
        <Fold title="Lengths">
          <LengthTable pattern={pattern} unit={unit} />
        </Fold>
      ) : null}
      {allowances.length > 0 ? (
        <Fold title="Edgings and seams">
          <AllowanceTable pattern={pattern} unit={unit} />
        </Fold>
      ) : null}
      <Fold title="Fabrics">
        <FabricCards fabrics={fabrics} />
      </Fold>
      <Fold title="Sizes">
        <BodyTable pattern={pattern} unit={unit} />
      </Fold>
      {instructions ? (
        <Fold title="Written instructions">
          <WrittenInstructions text={instructions} />
        </Fold>
      ) : null}
    </>
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
            <Link href={paste} className="text-link">
              Import more reports
            </Link>
            {open}
          </div>
        ) : null
      }
    >
      <LinkList
        items={calls.map(({ callId, title, testers }) => ({
          ...{ href: `/calls/${callId}`, name: title },
          says: (
            <>
              {testers === 1 ? "1 tester" : `${testers} testers`} ·{" "}
              <a href={`/calls/${callId}/export`} download className="text-link">
                Export file
              </a>
            </>
          ),
        }))}
      />
    </Section>
  );
}
