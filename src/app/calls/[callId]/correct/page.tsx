import type { Metadata } from "next";
import { CorrectView } from "@/features/analyses/components/correct-view";
import { correctionOf } from "@/features/analyses/correction";
import { loadAnalysis } from "@/features/analyses/loaders";
import { correctQuerySchema } from "@/features/analyses/schema";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { ChangeList } from "@/features/patterns/components/change-list";
import { SaveCorrection } from "@/features/patterns/components/save-correction";
import { correctedNumbers } from "@/features/patterns/schema";

export const metadata: Metadata = { title: "Correct the pattern" };

export default async function CorrectPage({ params, searchParams }: PageProps<"/calls/[callId]/correct">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const asked = await searchParams;
  const query = correctQuerySchema.parse(asked);
  const analysis = await loadAnalysis(loaded.access);
  const { unit } = loaded.viewer;
  const correction = correctionOf(analysis, { cell: query.cell, typed: correctedNumbers(Object.entries(asked)), unit });
  const { number } = loaded.revision;
  return (
    <CallPage loaded={loaded} tab="correct" title="Correct the pattern">
      <CorrectView
        {...{ callId, query, correction, unit }}
        mayEdit={loaded.mayEdit}
        pattern={analysis.document.pattern}
        number={number}
        changes={correction ? <ChangeList changes={correction.applied.changes} unit={unit} /> : null}
        save={(reason) =>
          correction ? (
            <SaveCorrection
              sends={{
                ...correction.typed,
                ...{ patternId: loaded.call.patternId, callId, reason, baseNumber: String(number) },
                ...{ size: correction.size.id, measurement: correction.measurement.id },
              }}
              nextNumber={number + 1}
              questions={correction.applied.askedBack.map(({ says }) => says)}
            />
          ) : null
        }
      />
    </CallPage>
  );
}
