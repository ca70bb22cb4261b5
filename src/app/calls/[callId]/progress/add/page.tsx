import type { Metadata } from "next";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { isMailOn } from "@/features/mail/mail-status";
import { AddForm } from "@/features/testing/progress/add-form";
import { Notice } from "@/ui/notice";
import { notFound } from "next/navigation";

const TITLE = "Invite by hand";

export async function generateMetadata({ params }: PageProps<"/calls/[callId]/progress/add">): Promise<Metadata> {
  const loaded = await loadCall((await params).callId).catch(() => null);
  return { title: loaded?.mayEdit ? TITLE : { absolute: `${TITLE} · Sizewright` } };
}

export default async function AddTesterPage({ params }: PageProps<"/calls/[callId]/progress/add">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  if (!loaded.mayEdit) notFound();
  return (
    <CallPage
      loaded={loaded}
      page="progress"
      title="Invite someone by hand"
      intro={`For someone who has not applied. ${isMailOn() ? "With an address, they get their link by e-mail." : "You send them their link yourself."}`}
    >
      {loaded.call.status === "open" ? (
        <div className="max-w-xl">
          <AddForm
            callId={callId}
            isMailed={isMailOn()}
            sizes={loaded.revision.document.sizes.map(({ id, label }) => ({ id, label }))}
          />
        </div>
      ) : (
        <Notice title="This test is closed">Reopen it under “Progress” to invite someone.</Notice>
      )}
    </CallPage>
  );
}
