import type { Metadata } from "next";
import { CallOverview } from "@/features/calls/components/call-overview";
import { CallPage } from "@/features/calls/components/call-page";
import { CallStandingSection } from "@/features/calls/components/call-standing-section";
import { callPageHref } from "@/features/calls/call-pages";
import { callPlaces } from "@/features/calls/places-data";
import { reportsBySize } from "@/features/calls/reports-data";
import { loadCall } from "@/features/calls/loaders";
import { callStanding } from "@/features/calls/standing-data";
import { callSteps } from "@/features/results/call-steps-data";
import { ButtonLink } from "@/ui/button";

export async function generateMetadata({ params }: PageProps<"/calls/[callId]">): Promise<Metadata> {
  const loaded = await loadCall((await params).callId).catch(() => null);
  return { title: loaded?.call.title ?? "Call" };
}

export default async function OneCallPage({ params }: PageProps<"/calls/[callId]">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { access, call, revision, mayEdit } = loaded;
  const [places, reports, standing] = await Promise.all([
    callPlaces(access),
    reportsBySize(access),
    callStanding(access),
  ]);
  const steps = await callSteps(access, { standing, revision, now: new Date() });
  // An imported call has no testers to manage, so it links to its differences.
  const isRun = standing.listing !== null || standing.invited > 0;
  const actions = (
    <>
      {isRun && reports.total === 0 ? null : (
        <ButtonLink href={callPageHref(callId, "differences")} look={isRun ? "quiet" : "main"}>
          Differences
        </ButtonLink>
      )}
      {mayEdit && call.status === "open" ? (
        <ButtonLink href={`/patterns/${call.patternId}/reports/paste?call=${callId}`} look="quiet">
          {reports.total === 0 ? "Import reports" : "Import more reports"}
        </ButtonLink>
      ) : null}
      <a href={`/calls/${callId}/export`} className="text-link">
        Export file
      </a>
    </>
  );
  return (
    <CallPage loaded={loaded} page="overview" title={call.title} actions={actions}>
      {isRun ? <CallStandingSection callId={callId} standing={standing} steps={steps} /> : null}
      <CallOverview {...{ callId, places, reports, isRun }} pattern={revision.document} />
    </CallPage>
  );
}
