import type { ReactNode } from "react";
import type { LengthUnit } from "@/engine/units";
import { callPageHref } from "@/features/calls/call-pages";
import { ButtonLink } from "@/ui/button";
import { Notice } from "@/ui/notice";
import type { LoadedPlan } from "../loaders";
import type { RevisedPlan } from "./plan-outcome";
import { PlanOutcomeView, type Warning } from "./plan-outcome-view";
import { StillCalculating } from "../components/still-calculating";

interface PlanViewProps {
  readonly loaded: LoadedPlan;
  readonly callId: string;
  readonly patternId: string;
  readonly mayEdit: boolean;
  readonly unit: LengthUnit;
  /** The newest revision's number, and the call's version now. */
  readonly number: number;
  readonly callVersion: number;
  /** Whom a correction of the text would still reach in time; null where nobody. */
  readonly told: string | null;
  /** What the patterns feature draws of the revised pattern. */
  readonly draw: (revised: RevisedPlan) => { readonly changes: ReactNode; readonly warnings: readonly Warning[] };
}

/** What the chosen proposals do to the pattern, or why they cannot be applied. */
export function PlanView(props: PlanViewProps) {
  const { loaded, callId, patternId, draw } = props;
  const { output, request } = loaded.plan;
  const back = <ButtonLink href={callPageHref(callId, "changes")}>Back to suggested changes</ButtonLink>;
  if (output === null)
    return <StillCalculating what="plan" watch={`/calls/${callId}/changes/${loaded.plan.planId}/status`} />;
  if (request.kind !== "proposals") return <Overtaken>{back}</Overtaken>;
  switch (output.status) {
    case "revised":
      return <PlanOutcomeView {...props} take={request.take} revised={output} {...draw(output)} />;
    case "infeasible":
      return (
        <>
          <Notice tone="problem" title="Stitches and rows cannot be calculated: these rules contradict each other">
            <ul className="mt-2 list-disc space-y-1 pl-5">
              {output.clash.map(({ says }) => (
                <li key={says}>{says}</li>
              ))}
            </ul>
          </Notice>
          <p className="mb-6 max-w-3xl">
            Change any one of them: unlock a number, allow another repeat, or let a count get smaller. You can edit the
            pattern, or go back and keep the counts as they are.
          </p>
          <div className="flex flex-wrap gap-3">
            {back}
            <ButtonLink look="quiet" href={`/patterns/${patternId}/edit`}>
              Edit the pattern
            </ButtonLink>
          </div>
        </>
      );
    case "faults":
      return (
        <>
          <Notice tone="problem" title="This cannot be calculated">
            <ul className="mt-1 list-disc space-y-1 pl-5">
              {output.faults.map(({ path, says }) => (
                <li key={path}>
                  {path.startsWith("take")
                    ? `One of the proposals ${says}`
                    : `${says.charAt(0).toUpperCase()}${says.slice(1)}`}
                </li>
              ))}
            </ul>
          </Notice>
          {back}
        </>
      );
    case "stopped":
      return (
        <>
          <Notice tone="problem" title="The calculation took too long and was stopped">
            <p>
              Nothing was changed. Accept fewer proposals at once and save them one after another, or choose “keep
              stitches and rows”, which needs no calculation.
            </p>
          </Notice>
          {back}
        </>
      );
    case "failed":
      return (
        <>
          <Notice tone="problem" title="This could not be calculated because of an error in Sizewright">
            <p>Nothing was changed. Accept fewer proposals at once, or correct the numbers yourself.</p>
          </Notice>
          {back}
        </>
      );
    case "expected":
    case "overtaken":
      return <Overtaken>{back}</Overtaken>;
  }
}

function Overtaken({ children }: { readonly children: ReactNode }) {
  return (
    <>
      <Notice tone="problem" title="Reports or the pattern changed before this was calculated">
        <p>Nothing was changed. Look at the current proposals and choose again.</p>
      </Notice>
      {children}
    </>
  );
}
