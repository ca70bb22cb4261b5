import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { z } from "zod";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { readRecipients } from "@/features/testing/progress/message-data";
import { MessageView } from "@/features/testing/progress/message-view";

const TITLE = "Write to testers";

export async function generateMetadata({ params }: PageProps<"/calls/[callId]/progress/message">): Promise<Metadata> {
  const loaded = await loadCall((await params).callId).catch(() => null);
  return { title: loaded?.mayEdit ? TITLE : { absolute: `${TITLE} · Sizewright` } };
}

const chosenSchema = z.preprocess(
  (value: unknown) => (Array.isArray(value) ? value : value === undefined ? [] : [value]),
  z.array(z.uuid()).catch([]),
);

export default async function MessagePage({ params, searchParams }: PageProps<"/calls/[callId]/progress/message">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { access, call, viewer, mayEdit } = loaded;
  if (!mayEdit) notFound();
  const recipients = await readRecipients(access, chosenSchema.parse((await searchParams).testerId));
  return (
    <CallPage loaded={loaded} page="progress" title={TITLE}>
      <MessageView {...{ callId, recipients }} title={call.title} from={viewer.name} />
    </CallPage>
  );
}
