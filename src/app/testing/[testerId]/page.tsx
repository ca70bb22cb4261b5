import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import { SizeChanges } from "@/features/patterns/compare/size-changes";
import { piecesWords } from "@/features/calls/pieces-computed";
import { YarnForTester } from "@/features/results/yarn/yarn-for-tester";
import { yarnForTester } from "@/features/results/yarn/yarn-for-tester-data";
import { TesterHome } from "@/features/testing/home/components/tester-home";
import { loadTester } from "@/features/testing/home/loaders";
import { isMailOn } from "@/features/mail/mail-status";
import { loadNews } from "@/features/testing/news/news-loaders";
import { readOwnChoice } from "@/features/testing/reminders/choice-data";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Your test" };

export default async function TesterPage({ params }: PageProps<"/testing/[testerId]">) {
  const loaded = await loadTester((await params).testerId);
  const { size, call, revision, name, unit } = loaded.tester;
  const [news, needs, reminders] = await Promise.all([
    loadNews(loaded),
    yarnForTester(loaded.access, size.id),
    isMailOn() ? readOwnChoice(loaded.access) : null,
  ]);
  const pieces = piecesWords(revision.document, call.pieces);
  const compared = { before: revision.document, after: news.revision?.document, size: size.id, unit };
  const intro = (
    <>
      Size <bdi className="font-semibold text-ink">{size.label}</bdi>, for <bdi>{call.designerName}</bdi>
      {call.isDemo ? " (made up for the demo)" : null}
      {pieces === null ? null : (
        <>
          . You make and measure only: <bdi className="font-semibold text-ink">{pieces}</bdi>
        </>
      )}
    </>
  );
  return (
    <Page
      title={revision.document.name}
      above={<TestAndTester title={call.title} name={name} />}
      intro={intro}
      width="narrow"
    >
      <TesterHome
        {...{ loaded, news }}
        differences={compared.after ? <SizeChanges {...compared} after={compared.after} /> : null}
        yarn={needs.length > 0 ? <YarnForTester {...{ needs, unit }} yarns={revision.document.yarns} /> : null}
        reminders={reminders?.choice ?? null}
        now={new Date()}
        pageKey={randomUUID()}
      />
    </Page>
  );
}

function TestAndTester({ title, name }: { readonly title: string; readonly name: string | null }) {
  return (
    <>
      <bdi>{title}</bdi>
      {name === null ? null : (
        <>
          {" "}
          · tester: <bdi>{name}</bdi>
        </>
      )}
    </>
  );
}
