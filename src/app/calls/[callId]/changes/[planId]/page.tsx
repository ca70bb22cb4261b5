import type { Metadata } from "next";
import { patternChanges } from "@/engine/editing";
import { PlanView } from "@/features/results/changes/plan-view";
import { loadPlan } from "@/features/results/loaders";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
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
