import type { Metadata } from "next";
import { CorrectView } from "@/features/analyses/components/correct-view";
import { correctionOf } from "@/features/analyses/correction";
import { StillReckoning } from "@/features/analyses/components/still-reckoning";
import { loadAnalysis, type LoadedAnalysis } from "@/features/analyses/loaders";
import { correctQuerySchema } from "@/features/analyses/schema";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall, type LoadedCall } from "@/features/calls/loaders";
import { ChangeList } from "@/features/patterns/components/change-list";
import { SaveCorrection } from "@/features/patterns/components/save-correction";
import { correctedNumbers } from "@/features/patterns/schema";

export const metadata: Metadata = { title: "Correct the pattern" };

export default async function CorrectPage({ params, searchParams }: PageProps<"/calls/[callId]/correct">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const [asked, analysis] = [await searchParams, await loadAnalysis(loaded.access)];
  return (
    <CallPage loaded={loaded} tab="correct" title="Correct the pattern">
      {analysis === null ? <StillReckoning /> : <Correcting {...{ loaded, asked, analysis }} />}
    </CallPage>
  );
}

interface CorrectingProps {
  readonly loaded: LoadedCall;
  readonly asked: Awaited<PageProps<"/calls/[callId]/correct">["searchParams"]>;
  readonly analysis: LoadedAnalysis;
}

function Correcting({ loaded, asked, analysis }: CorrectingProps) {
  const { callId, patternId } = loaded.call;
  const { unit } = loaded.viewer;
  const { number } = loaded.revision;
  const query = correctQuerySchema.parse(asked);
  const correction = correctionOf(analysis, { cell: query.cell, typed: correctedNumbers(Object.entries(asked)), unit });
  return (
    <CorrectView
      {...{ callId, query, correction, unit, number }}
      mayEdit={loaded.mayEdit}
      pattern={analysis.document.pattern}
      changes={correction ? <ChangeList changes={correction.applied.changes} unit={unit} /> : null}
      save={(reason) =>
        correction ? (
          <SaveCorrection
            sends={{
              ...correction.typed,
              ...{ patternId, callId, reason, baseNumber: String(number) },
              ...{ size: correction.size.id, measurement: correction.measurement.id },
            }}
            nextNumber={number + 1}
            questions={correction.applied.askedBack.map(({ says }) => says)}
          />
        ) : null
      }
    />
  );
}
