import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { loadWriting } from "@/features/testing/writing/writing-loaders";
import { WriteView } from "@/features/testing/writing/write-view";

const TITLE = "Write to testers";

export async function generateMetadata({ params }: PageProps<"/calls/[callId]/progress/message">): Promise<Metadata> {
  const loaded = await loadCall((await params).callId).catch(() => null);
  return { title: loaded?.mayEdit ? TITLE : { absolute: `${TITLE} · Sizewright` } };
}

export default async function MessagePage({ params, searchParams }: PageProps<"/calls/[callId]/progress/message">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  if (!loaded.mayEdit) notFound();
  const writing = await loadWriting(loaded, await searchParams);
  return (
    <CallPage loaded={loaded} page="progress" title={TITLE}>
      <WriteView {...writing} callId={callId} formKey={randomUUID()} />
    </CallPage>
  );
}
