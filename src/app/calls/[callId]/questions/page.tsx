import type { Metadata } from "next";
import { CALL_PAGES } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { publishedVersions } from "@/features/patterns/published-data";
import { publishedCorrections } from "@/features/testing/corrections/correction-data";
import { correctionQuery } from "@/features/testing/corrections/correction-query";
import { CorrectionsLink, CorrectionsSection } from "@/features/testing/corrections/corrections-section";
import { QuestionsView } from "@/features/testing/questions/components/questions-view";
import { askedPlaces, troubledPlaces } from "@/features/testing/questions/place-notes-data";
import { questionsQuerySchema } from "@/features/testing/questions/questions-query";
import { photosOfTroubles } from "../photos-of-troubles";

export const metadata: Metadata = { title: CALL_PAGES.questions.name };

export default async function QuestionsPage({ params, searchParams }: PageProps<"/calls/[callId]/questions">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const search = await searchParams;
  const query = questionsQuerySchema.parse(search);
  const pattern = loaded.revision.document;
  const [asked, troubled, corrections, versions] = await Promise.all([
    askedPlaces(loaded.access, pattern, query),
    troubledPlaces(loaded.access, pattern, query),
    query.at === undefined ? publishedCorrections(loaded.access) : null,
    publishedVersions(loaded.access.pattern),
  ]);
  const photos = await photosOfTroubles(loaded.access, troubled);
  return (
    <CallPage
      loaded={loaded}
      page="questions"
      intro={corrections === null ? null : <CorrectionsLink {...{ corrections }} />}
    >
      <QuestionsView {...{ asked, troubled, photos, query, pattern, callId }} mayEdit={loaded.mayEdit} />
      {corrections === null ? null : (
        <CorrectionsSection
          {...{ callId, pattern, corrections }}
          mayEdit={loaded.mayEdit}
          revisionNumber={loaded.revision.number}
          version={versions.at(-1)?.label ?? null}
          asked={correctionQuery(search)}
        />
      )}
    </CallPage>
  );
}
