import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import { CorrectView, type CorrectionPlan } from "@/features/results/changes/correct-view";
import { correctionOf } from "@/features/results/changes/correction";
import { loadPlan } from "@/features/results/loaders";
import { cellKey } from "@/features/results/gaps/gap-address";
import { correctQuerySchema } from "@/features/results/schema";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall, type LoadedCall } from "@/features/calls/loaders";
import { ChangeList } from "@/features/patterns/components/change-list";
import { SaveCorrection } from "@/features/patterns/components/save-correction";

export const metadata: Metadata = { title: "Correct the pattern" };

export default async function CorrectPage({ params, searchParams }: PageProps<"/calls/[callId]/correct">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { revision, viewer, mayEdit } = loaded;
  const { number, document: pattern } = revision;
  const asked = await askedFor(loaded, correctQuerySchema.parse(await searchParams));
  const correction = correctionOf(pattern, { ...asked, unit: viewer.unit });
  return (
    <CallPage loaded={loaded} page="changes" title="Correct the pattern">
      <CorrectView
        {...{ callId, correction, pattern, number, mayEdit, unit: viewer.unit, plan: asked.plan }}
        formKey={randomUUID()}
        changes={correction ? <ChangeList changes={correction.applied.changes} unit={viewer.unit} /> : null}
        save={(reason) =>
          correction ? (
            <SaveCorrection
              sends={{
                ...correction.typed,
                ...{ patternId: loaded.call.patternId, callId, reason, baseNumber: String(number) },
                ...{ size: correction.size.id, measurement: correction.measurement.id },
              }}
              nextNumber={number + 1}
              questions={correction.applied.questions.map(({ message }) => message)}
            />
          ) : null
        }
      />
    </CallPage>
  );
}

interface Asked {
  readonly cell: string | undefined;
  readonly typed: Readonly<Record<string, string>>;
  readonly plan: CorrectionPlan | null;
}

/** The requested cell, or the numbers typed for one. */
async function askedFor({ access, call }: LoadedCall, query: { cell?: string; plan?: string }): Promise<Asked> {
  if (query.plan === undefined) return { cell: query.cell, typed: {}, plan: null };
  const { plan } = await loadPlan(access, query.plan);
  const { request, baseNumber, output } = plan;
  if (request.kind !== "correction") return { cell: undefined, typed: {}, plan: null };
  const { size, measurement, typed, reason } = request;
  const watch = `/calls/${call.callId}/changes/${plan.planId}/status`;
  return { cell: cellKey(size, measurement), typed, plan: { reason, baseNumber, output, watch } };
}
