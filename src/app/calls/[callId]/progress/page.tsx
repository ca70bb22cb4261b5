import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import { CALL_PAGES } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { ShortStepList } from "@/features/calls/components/next-step-list";
import { callPlaces } from "@/features/calls/places-data";
import { loadCall } from "@/features/calls/loaders";
import { callStanding } from "@/features/calls/standing-data";
import { testedRevision } from "@/features/testing/again/again-data";
import { NextCall } from "@/features/testing/again/next-call";
import { CallClosing } from "@/features/testing/progress/call-closing";
import { correctionSteps, stepsOf } from "@/features/results/call-steps-data";
import { ProgressView } from "@/features/testing/progress/progress-view";
import { progressList } from "@/features/testing/progress/progress-list-data";
import { progressQuerySchema } from "@/features/testing/progress/progress-query";
import { ButtonLink } from "@/ui/button";
import { Section } from "@/ui/section";

export const metadata: Metadata = { title: CALL_PAGES.progress.name };

export default async function ProgressPage({ params, searchParams }: PageProps<"/calls/[callId]/progress">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { access, revision, viewer, mayEdit, call } = loaded;
  const pattern = revision.document;
  const now = new Date();
  const query = progressQuerySchema.parse(await searchParams);
  const standingRead = callStanding(access);
  const formKey = randomUUID();
  const [list, places, standing, corrections, tested] = await Promise.all([
    progressList(access, { pattern, query, now }),
    callPlaces(access),
    standingRead,
    standingRead.then((standing) => correctionSteps(access, { standing, revision })),
    // Where there is one revision, that one is tested.
    revision.number === 1 ? revision.number : testedRevision(access),
  ]);
  const steps = [...corrections, ...stepsOf(standing, list.together)];
  const isOpen = call.status === "open";
  const add = (
    <>
      {call.followsAnother ? (
        <ButtonLink href={`/calls/${callId}/progress/again`} look="quiet">
          Invite earlier testers
        </ButtonLink>
      ) : null}
      {list.counts.length > 0 ? (
        <ButtonLink href={`/calls/${callId}/progress/add`} look="quiet">
          Invite someone by hand
        </ButtonLink>
      ) : null}
    </>
  );
  return (
    <CallPage loaded={loaded} page="progress" actions={mayEdit && isOpen ? add : null}>
      {steps.length === 0 ? null : (
        <Section title="What needs you">
          <ShortStepList callId={callId} steps={steps} />
        </Section>
      )}
      <ProgressView {...{ callId, pattern, places, list, query, now }} unit={viewer.unit} mayEdit={mayEdit && isOpen} />
      {mayEdit || loaded.mayRestore ? (
        <Section title={isOpen ? "When everything is in" : call.isArchived ? "Archived" : "Closed"}>
          <CallClosing callId={callId} isOpen={isOpen} isArchived={call.isArchived} />
          {mayEdit ? (
            <NextCall {...{ callId, testedRevision: tested, formKey }} newestRevision={revision.number} />
          ) : null}
        </Section>
      ) : null}
    </CallPage>
  );
}
