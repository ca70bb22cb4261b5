import type { ReactNode } from "react";
import type { AcceptedProposal } from "@/engine/revision";
import type { LengthUnit } from "@/engine/units";
import { callPageHref } from "@/features/calls/call-pages";
import { ButtonLink } from "@/ui/button";
import { Notice } from "@/ui/notice";
import { MessageList } from "@/ui/message-list";
import { Section } from "@/ui/section";
import type { LoadedPlan } from "../loaders";
import { planOutcome, type RevisedPlan } from "./plan-outcome";
import { expectedWords, missedWords, summaryWords } from "./plan-copy";
import { instructionErrorCopy, proposedReason, acceptedCopy } from "./accepted-copy";
import { ChangedNumbers } from "./changed-numbers";
import { ExpectedMatrix } from "./expected-matrix";
import { ReplayedReports } from "./replayed-reports";
import { SavePlan } from "./save-plan";
import { AcceptedList } from "./accepted-list";

/** A rule of the pattern that its new numbers break. */
export interface Warning {
  readonly path: string;
  readonly says: string;
}

interface PlanOutcomeViewProps {
  readonly loaded: LoadedPlan;
  readonly take: readonly AcceptedProposal[];
  readonly revised: RevisedPlan;
  readonly callId: string;
  readonly mayEdit: boolean;
  readonly unit: LengthUnit;
  /** The newest revision's number, and the call's version now. */
  readonly number: number;
  readonly callVersion: number;
  /** Whom a correction of the text would still reach in time; null where nobody. */
  readonly told: string | null;
  readonly changes: ReactNode;
  readonly warnings: readonly Warning[];
}

/** Everything that saving a plan would change. */
export function PlanOutcomeView(props: PlanOutcomeViewProps) {
  const { loaded, take, revised, callId, unit, changes, warnings } = props;
  const { plan, base } = loaded;
  const { cells, causes } = plan.differences;
  const outcome = planOutcome({ before: base.document, cellsBefore: cells, take, plan: revised });
  const taken = acceptedCopy(take, { causes, pattern: base.document, unit });
  const missed = missedWords(outcome.rows, unit);
  return (
    <>
      <Notice title={summaryWords(outcome.rows)}>
        <p>
          Nothing is saved yet.{" "}
          <a href="#save" className="text-link">
            Go to Save
          </a>
        </p>
      </Notice>
      <Section
        title="What you accepted"
        actions={
          <ButtonLink look="plain" href={callPageHref(callId, "changes")}>
            Choose again
          </ButtonLink>
        }
      >
        <AcceptedList taken={taken} />
      </Section>
      <Section title="What changes in the pattern">
        <ChangedNumbers outcome={outcome} sizes={revised.pattern.sizes} unit={unit} changes={changes} />
        {warnings.length === 0 ? null : (
          <div className="mt-5">
            <MessageList
              id="warnings"
              tone="problem"
              title="The new numbers break rules of your pattern"
              items={warnings.map(({ path, says }) => ({ where: path, says }))}
            />
          </div>
        )}
      </Section>
      <Section title="Every measurement after the change" intro={expectedWords(outcome.rows)}>
        {missed.length === 0 ? null : (
          <Notice tone="problem" title="Still off target">
            <ul className="numbers mt-1 space-y-1">
              {missed.map((says) => (
                <li key={says} className="wrap-anywhere">
                  {says}
                </li>
              ))}
            </ul>
          </Notice>
        )}
        <ExpectedMatrix rows={outcome.rows} sizes={revised.pattern.sizes} unit={unit} />
      </Section>
      <ReplayedReports
        rows={outcome.rows}
        unit={unit}
        readingNote={instructionErrorCopy(revised.instructionErrors, base.document)}
      />
      <div id="save" className="scroll-mt-6">
        <Saving {...props} reason={proposedReason(taken)} />
      </div>
    </>
  );
}

function Saving({
  loaded,
  callVersion,
  callId,
  mayEdit,
  number,
  told,
  reason,
}: PlanOutcomeViewProps & { readonly reason: string }) {
  const { plan } = loaded;
  if (!mayEdit) return <Notice>You can see this. Only the pattern’s owner or an editor can save it.</Notice>;
  if (number !== plan.baseNumber)
    return (
      <Notice
        tone="problem"
        title={`This was calculated from revision ${plan.baseNumber}, but revision ${number} is now the newest`}
      >
        <p>
          It can no longer be saved. Nothing is lost:{" "}
          <a href={callPageHref(callId, "changes")} className="text-link">
            see what is left to change in revision {number}
          </a>
          .
        </p>
      </Notice>
    );
  return (
    <Section title={`Save as revision ${plan.baseNumber + 1}`}>
      {plan.callVersion !== callVersion ? (
        <Notice tone="problem" title="New reports came in after this was calculated">
          <p>
            You can save it as it is, or{" "}
            <a href={callPageHref(callId, "changes")} className="text-link">
              recalculate with all reports
            </a>
            .
          </p>
        </Notice>
      ) : null}
      <SavePlan {...{ callId, reason, told }} planId={plan.planId} nextNumber={plan.baseNumber + 1} />
    </Section>
  );
}
