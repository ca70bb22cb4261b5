import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { CALL_PAGES } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { isMailOn } from "@/features/mail/mail-status";
import { readMessageChanges } from "@/features/testing/messages/message-change-data";
import { MessageList } from "@/features/testing/messages/message-list";

export function generateMetadata(): Metadata {
  const { name } = CALL_PAGES.messages;
  return { title: isMailOn() ? name : { absolute: `${name} · Sizewright` } };
}

export default async function MessagesPage({ params }: PageProps<"/calls/[callId]/messages">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  if (!isMailOn()) notFound();
  return (
    <CallPage
      loaded={loaded}
      page="messages"
      intro="What Sizewright sends to applicants and testers, and when. You can change the words of each message, add a note, and switch off those that nobody needs."
    >
      <MessageList callId={callId} changes={await readMessageChanges(loaded.access)} mayEdit={loaded.mayEdit} />
    </CallPage>
  );
}
