import type { Metadata } from "next";
import { z } from "zod";
import { CallPage } from "@/features/calls/components/call-page";
import { callPlaces } from "@/features/calls/data";
import { loadCall } from "@/features/calls/loaders";
import { CallClosing } from "@/features/testers/components/progress/call-closing";
import { ProgressView } from "@/features/testers/components/progress/progress-view";
import { progressRows } from "@/features/testers/progress-data";
import { progressOf } from "@/features/testers/progress-state";
import { ButtonLink } from "@/ui/button";
import { Section } from "@/ui/section";

export const metadata: Metadata = { title: "Progress" };

const querySchema = z.object({
  size: z.string().nullable().catch(null).default(null),
  page: z.coerce.number().int().min(1).catch(1),
});

export default async function ProgressPage({ params, searchParams }: PageProps<"/calls/[callId]/progress">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { access, revision, viewer, mayEdit, call } = loaded;
  const [rows, places] = await Promise.all([progressRows(access), callPlaces(access)]);
  const { size, page } = querySchema.parse(await searchParams);
  const isOpen = call.status === "open";
  const add = (
    <ButtonLink href={`/calls/${callId}/progress/add`} look="quiet">
      Invite somebody by hand
    </ButtonLink>
  );
  return (
    <CallPage
      loaded={loaded}
      tab="progress"
      title="Progress"
      actions={mayEdit && isOpen && rows.length > 0 ? add : null}
    >
      <ProgressView
        {...{ callId, places, size, page }}
        pattern={revision.document}
        people={progressOf(rows, revision.document, new Date())}
        unit={viewer.unit}
        mayEdit={mayEdit && isOpen}
      />
      {mayEdit ? (
        <Section title={isOpen ? "When all is in" : "Closed"}>
          <CallClosing callId={callId} isOpen={isOpen} />
        </Section>
      ) : null}
    </CallPage>
  );
}
