import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import { TesterHome } from "@/features/testing/home/components/tester-home";
import { loadTester } from "@/features/testing/home/loaders";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "Your test" };

export default async function TesterPage({ params }: PageProps<"/testing/[testerId]">) {
  const loaded = await loadTester((await params).testerId);
  const { size, call, revision, name } = loaded.tester;
  const intro = (
    <>
      Size <bdi className="font-semibold text-ink">{size.label}</bdi>, for <bdi>{call.designerName}</bdi>
      {call.isDemo ? " (made up for the demo)" : null}
    </>
  );
  return (
    <Page
      title={revision.document.name}
      above={<TestAndTester title={call.title} name={name} />}
      intro={intro}
      width="narrow"
    >
      <TesterHome loaded={loaded} now={new Date()} pageKey={randomUUID()} />
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
