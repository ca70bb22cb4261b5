import type { Metadata } from "next";
import { patternChanges } from "@/engine/editing";
import { PlanView } from "@/features/results/changes/plan-view";
import { textFixes } from "@/features/results/changes/text-fixes";
import { earlyWords } from "@/features/results/early-correction-copy";
import { tellableInTime } from "@/features/results/early-corrections-data";
import { loadPlan, type LoadedPlan } from "@/features/results/loaders";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall, type LoadedCall } from "@/features/calls/loaders";
import { ChangeList } from "@/features/patterns/components/change-list";
import { ruleWarnings } from "@/features/patterns/pattern-copy";

export const metadata: Metadata = { title: "See what changes" };

export default async function PlanPage({ params }: PageProps<"/calls/[callId]/changes/[planId]">) {
  const { callId, planId } = await params;
  const loaded = await loadCall(callId);
  const plan = await loadPlan(loaded.access, planId);
  const { unit } = loaded.viewer;
  return (
    <CallPage loaded={loaded} page="changes" title="See what changes">
      <PlanView
        loaded={plan}
        {...{ callId, unit }}
        patternId={loaded.call.patternId}
        mayEdit={loaded.mayEdit}
        number={loaded.revision.number}
        callVersion={loaded.call.version}
        told={await toldInTime(loaded, plan)}
        draw={({ pattern }) => {
          const alike = patternChanges(plan.base.document, pattern).filter(
            ({ size, path }) => size === undefined && !path.endsWith("terms"),
          );
          return {
            changes: alike.length === 0 ? null : <ChangeList changes={alike} unit={unit} />,
            warnings: ruleWarnings(pattern),
          };
        }}
      />
    </CallPage>
  );
}

/** Who of an open test could still be told in time what the plan finds wrong in the text. */
async function toldInTime(
  { access, call }: LoadedCall,
  { plan: { output }, base }: LoadedPlan,
): Promise<string | null> {
  if (call.status !== "open" || output?.status !== "revised") return null;
  const { pattern: after, instructionErrors } = output;
  const fixes = textFixes({ before: base.document, after, instructionErrors });
  const early = await tellableInTime(access, base.document, fixes);
  return early.length === 0 ? null : early.map((one) => earlyWords(one, base.document)).join(" ");
}
