import type { Metadata } from "next";
import Link from "next/link";
import { KeptView } from "@/features/testers/components/kept-view";
import { keptOfTester } from "@/features/testers/kept-data";
import { loadTester } from "@/features/testers/loaders";
import { Page } from "@/ui/page";

export const metadata: Metadata = { title: "What is kept of you" };

export default async function KeptPage({ params }: PageProps<"/testing/[testerId]/kept">) {
  const { access, tester } = await loadTester((await params).testerId);
  const above = (
    <Link href={`/testing/${tester.testerId}`} prefetch={false} className="text-link inline-flex min-h-8 items-center">
      ← Your test of {tester.revision.document.name}
    </Link>
  );
  return (
    <Page title="What is kept of you, and who sees it" above={above} width="narrow">
      <KeptView tester={tester} kept={await keptOfTester(access)} />
    </Page>
  );
}
