import Link from "next/link";
import type { ReactNode } from "react";
import type { PatternDocument } from "@/engine/pattern";
import type { Expectation } from "@/engine/revision";
import type { LengthUnit } from "@/engine/units";
import { callPageHref } from "@/features/calls/call-pages";
import { ButtonLink } from "@/ui/button";
import { EmptyState } from "@/ui/empty-state";
import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import type { Correction } from "./correction";
import type { PlanOutput } from "./plan-schema";
import { cellKey } from "../gaps/gap-address";
import { againstTarget, targetWords } from "../target-copy";
import { CorrectForm } from "./correct-form";
import { ExpectationTable } from "./expectation-table";
import { StillCalculating } from "../components/still-calculating";

export interface CorrectionPlan {
  readonly reason: string;
  /** The revision that the numbers were typed against. */
  readonly baseNumber: number;
  /** Address that answers whether it has been calculated. */
  readonly watch: string;
  readonly output: PlanOutput | null;
}

interface CorrectViewProps {
  readonly callId: string;
  readonly correction: Correction | null;
  /** What was calculated for these numbers; null before "Show what changes". */
  readonly plan: CorrectionPlan | null;
  readonly formKey: string;
  readonly pattern: PatternDocument;
  readonly unit: LengthUnit;
  readonly mayEdit: boolean;
  /** The newest revision's number. */
  readonly number: number;
  readonly changes: ReactNode;
  readonly save: (reason: string) => ReactNode;
}

/** Correcting the numbers that one measurement of one size is calculated from. */
export function CorrectView(props: CorrectViewProps) {
  const { callId, correction, plan, formKey, mayEdit, number } = props;
  if (!mayEdit)
    return (
      <Notice tone="problem">
        You can see this test. Only the pattern’s owner or an editor can correct the pattern.
      </Notice>
    );
  if (correction === null)
    return (
      <EmptyState
        title="Choose a measurement first"
        actions={<ButtonLink href={callPageHref(callId, "differences")}>See the differences</ButtonLink>}
      >
        <p>Choose a measurement and size under Differences, then “Correct this number”.</p>
      </EmptyState>
    );
  const { measurement, size, fields } = correction;
  const reason = plan?.reason ?? `${measurement.label} in ${size.label}, after the test.`;
  return (
    <>
      {plan !== null && plan.baseNumber < number ? (
        <Notice tone="problem">
          Revision {number} was saved while you were working. Your numbers are still here, now compared with that
          revision.
        </Notice>
      ) : null}
      <p className="mb-6 max-w-3xl">
        Correct single numbers here. To change what the reports point to, and have stitches and rows recalculated, use{" "}
        <Link href={callPageHref(callId, "changes")} className="text-link">
          Causes and changes
        </Link>
        .
      </p>
      <Section title={`The numbers behind ${measurement.label} in ${size.label}`}>
        <CorrectForm
          {...{ callId, reason, fields, formKey }}
          cell={cellKey(size.id, measurement.id)}
          baseNumber={number}
        />
      </Section>
      {plan === null ? null : <Outcome {...props} {...{ correction, plan, reason }} />}
    </>
  );
}

interface OutcomeProps {
  readonly correction: Correction;
  readonly plan: CorrectionPlan;
  readonly reason: string;
}

function Outcome({ callId, correction, plan, pattern, unit, changes, save, reason }: CorrectViewProps & OutcomeProps) {
  const { applied } = correction;
  if (applied.faults.length > 0)
    return <Notice tone="problem">Some numbers above need fixing. Nothing was changed.</Notice>;
  return (
    <div id="changes" className="scroll-mt-6">
      <Section title="What changes">{changes}</Section>
      {applied.changes.length === 0 ? null : <Expected {...{ callId, plan, pattern, unit }} />}
      {applied.changes.length === 0 ? null : reason.trim() === "" ? (
        <Notice tone="problem">To save, write above what you change and why.</Notice>
      ) : (
        save(reason)
      )}
    </div>
  );
}

interface ExpectedProps {
  readonly callId: string;
  readonly plan: CorrectionPlan;
  readonly pattern: PatternDocument;
  readonly unit: LengthUnit;
}

/** What the corrected measurements should come out at, once calculated. */
function Expected({ callId, plan: { output, watch }, pattern, unit }: ExpectedProps) {
  if (output === null) return <StillCalculating what="plan" watch={watch} />;
  if (output.status !== "expected")
    return (
      <Notice tone="problem" title="The expected measurements could not be calculated">
        <p>{NOT_EXPECTED[output.status === "overtaken" ? "overtaken" : "failed"]}</p>
      </Notice>
    );
  const touched = output.expectations.filter((expectation) => expectation.touched);
  if (touched.length === 0) return null;
  return (
    <Section
      title="Expected measurements after the correction"
      intro="The reports are compared with the corrected pattern, using the counts and lengths each tester really worked."
    >
      <StillMissed {...{ callId, touched, pattern, unit }} />
      <ExpectationTable {...{ touched, pattern, unit }} />
    </Section>
  );
}

const NOT_EXPECTED = {
  overtaken: "Reports or the pattern changed in the meantime. Press “Show what changes” again to include everything.",
  failed: "You can still save the numbers themselves.",
} as const;

interface StillMissedProps {
  readonly callId: string;
  readonly touched: readonly Expectation[];
  readonly pattern: PatternDocument;
  readonly unit: LengthUnit;
}

/** A difference may disappear while garments still miss the target: the pattern then states what it makes, not what was wanted. */
function StillMissed({ callId, touched, pattern, unit }: StillMissedProps) {
  const missed = touched.flatMap(({ size, measurement, expectedCm, targetCm }) => {
    const found = pattern.measurements.find(({ id }) => id === measurement);
    if (found === undefined) return [];
    const expected = { expectedCm: expectedCm.after, targetCm: targetCm.after, toleranceCm: found.toleranceCm };
    if (againstTarget(expected) !== "missed") return [];
    const label = pattern.sizes.find(({ id }) => id === size)?.label ?? size;
    return [`${found.label} in ${label}: ${targetWords(expected, unit)}.`];
  });
  if (missed.length === 0) return null;
  return (
    <Notice tone="problem" title="The pattern would be correct, but these measurements still miss their target">
      <ul className="numbers mt-1 space-y-1">
        {missed.map((says) => (
          <li key={says} className="wrap-anywhere">
            {says}
          </li>
        ))}
      </ul>
      <p className="mt-2">
        Change the counts above too, or use{" "}
        <Link href={callPageHref(callId, "changes")} className="text-link">
          Causes and changes
        </Link>{" "}
        to recalculate them in every size.
      </p>
    </Notice>
  );
}
