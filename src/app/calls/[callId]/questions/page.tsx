import type { Metadata } from "next";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { QuestionsView } from "@/features/questions/components/questions-view";
import { TroublePlaces } from "@/features/questions/components/trouble-places";
import { callQuestions, callTroubles } from "@/features/questions/data";

export const metadata: Metadata = { title: "Questions" };

export default async function QuestionsPage({ params }: PageProps<"/calls/[callId]/questions">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const [questions, troubles] = await Promise.all([callQuestions(loaded.access), callTroubles(loaded.access)]);
  const pattern = loaded.revision.document;
  return (
    <CallPage loaded={loaded} tab="questions" title="What testers ask">
      <QuestionsView {...{ questions, pattern, callId }} mayEdit={loaded.mayEdit} />
      <TroublePlaces {...{ troubles, pattern }} />
    </CallPage>
  );
}
