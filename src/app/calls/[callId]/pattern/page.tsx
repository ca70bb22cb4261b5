import type { Metadata } from "next";
import Link from "next/link";
import type { ReactNode } from "react";
import { CALL_PAGES } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall, type LoadedCall } from "@/features/calls/loaders";
import { WrittenInstructions } from "@/features/patterns/components/written-instructions";
import { openInstructionFixes } from "@/features/patterns/follow-up/instruction-fix-data";
import { fixesUnderPassages, InstructionFixList } from "@/features/patterns/follow-up/instruction-fix-list";
import { Day } from "@/ui/day";
import { Section } from "@/ui/section";

export const metadata: Metadata = { title: CALL_PAGES.pattern.name };

export default async function CallPatternPage({ params }: PageProps<"/calls/[callId]/pattern">) {
  const loaded = await loadCall((await params).callId);
  const { revision } = loaded;
  const pattern = revision.document;
  const { instructions } = pattern;
  const fixes = await openInstructionFixes(loaded.access.pattern, pattern);
  return (
    <CallPage
      loaded={loaded}
      page="pattern"
      intro={
        <>
          Revision {revision.number}, saved on <Day at={revision.createdAt} />
          {revision.createdBy === null ? null : <> by {revision.createdBy}</>}. Testers read the text in their own size.
        </>
      }
    >
      <div className="grid items-start gap-x-12 lg:grid-cols-[2fr_1fr]">
        <div className="min-w-0">
          <InstructionFixList patternId={loaded.call.patternId} mayEdit={loaded.mayEdit} {...{ pattern, fixes }} />
          <Section title="Text">
            {instructions ? (
              <WrittenInstructions text={instructions} under={fixesUnderPassages(fixes, pattern)} />
            ) : (
              <p className="text-soft">This pattern has no written instructions yet.</p>
            )}
          </Section>
        </div>
        <div>
          <Section title="This pattern">
            <PatternLinks loaded={loaded} />
          </Section>
          <Section title="Downloads">
            <Downloads loaded={loaded} />
          </Section>
        </div>
      </div>
    </CallPage>
  );
}

function PatternLinks({ loaded: { call, mayEdit } }: { readonly loaded: LoadedCall }) {
  const home = `/patterns/${call.patternId}`;
  return (
    <ul>
      <LinkRow>
        <Link href={home}>Sizes, counts and measurements</Link>
      </LinkRow>
      <LinkRow>
        <Link href={`${home}/pieces`}>Pieces</Link>
      </LinkRow>
      {mayEdit ? (
        <LinkRow>
          <Link href={`${home}/edit`}>Edit</Link>
        </LinkRow>
      ) : null}
      <LinkRow>
        <Link href={`${home}/revisions`}>Revisions</Link>
      </LinkRow>
    </ul>
  );
}

const TABLES = [
  { file: "differences.csv", name: CALL_PAGES.differences.name },
  { file: "steps.csv", name: `${CALL_PAGES.differences.name}, step by step` },
  { file: "swatches.csv", name: CALL_PAGES.swatches.name },
  { file: "habits.csv", name: CALL_PAGES.habits.name },
  { file: "mistakes.csv", name: CALL_PAGES.mistakes.name },
  { file: "yarn.csv", name: CALL_PAGES.yarn.name },
  { file: "fit.csv", name: CALL_PAGES.fit.name },
] as const;

function Downloads({ loaded: { call } }: { readonly loaded: LoadedCall }) {
  const tables = call.hasTesters ? TABLES : [];
  return (
    <ul>
      <LinkRow>
        <a href={`/patterns/${call.patternId}/export`} download>
          Pattern (JSON)
        </a>
      </LinkRow>
      <LinkRow>
        <a href={`/calls/${call.callId}/export`} download>
          Test with all reports (JSON)
        </a>
      </LinkRow>
      {tables.map(({ file, name }) => (
        <LinkRow key={file}>
          <a href={`/calls/${call.callId}/${file}`}>{name} (CSV)</a>
        </LinkRow>
      ))}
    </ul>
  );
}

function LinkRow({ children }: { readonly children: ReactNode }) {
  return <li className="*:text-link *:inline-flex *:min-h-11 *:items-center">{children}</li>;
}
