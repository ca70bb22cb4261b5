import Link from "next/link";
import { callPageHref } from "@/features/calls/call-pages";
import { NextStepList } from "@/features/calls/components/next-step-list";
import { nextSteps } from "@/features/calls/next-steps";
import { openStandings, type StandingCall } from "@/features/calls/standing-data";
import { NewPatternLinks, NoPatterns, PatternList } from "@/features/patterns/components/pattern-list";
import { loadPatterns } from "@/features/patterns/loaders";
import { Page } from "@/ui/page";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";

/** What waits for a designer's decision in all their tests, and their patterns. */
export async function DesignerHome() {
  const { viewer, patterns } = await loadPatterns();
  const isEmpty = patterns.length === 0;
  const waiting = (await openStandings(viewer)).filter((standing) => nextSteps(standing).length > 0);
  return (
    <Page title="Home" actions={isEmpty ? null : <NewPatternLinks />}>
      {isEmpty ? (
        <NoPatterns />
      ) : (
        <>
          <Section title="Waiting for you">
            {waiting.length === 0 ? (
              <p className="text-soft">Nothing needs your decision now.</p>
            ) : (
              <ul className="grid gap-5 lg:grid-cols-2">
                {waiting.map((standing) => (
                  <li key={standing.callId}>
                    <WaitingCall standing={standing} />
                  </li>
                ))}
              </ul>
            )}
          </Section>
          <Section title="Your patterns">
            <PatternList patterns={patterns} />
          </Section>
        </>
      )}
    </Page>
  );
}

function WaitingCall({ standing }: { readonly standing: StandingCall }) {
  const { callId, title } = standing;
  return (
    <Sheet className="h-full">
      <h3 className="mb-2 text-xl wrap-anywhere">
        <Link href={callPageHref(callId, "overview")} className="hover:text-thread hover:underline">
          {title}
        </Link>
      </h3>
      <NextStepList callId={callId} steps={nextSteps(standing)} />
    </Sheet>
  );
}
