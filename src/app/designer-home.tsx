import Link from "next/link";
import { callPageHref } from "@/features/calls/call-pages";
import { ArchivedLink } from "@/features/calls/components/archived-link";
import { NextStepList } from "@/features/calls/components/next-step-list";
import { NewPatternLinks, NoPatterns } from "@/features/patterns/components/pattern-list";
import { loadPatterns } from "@/features/patterns/loaders";
import { PatternCards } from "@/app/pattern-cards";
import { waitingCalls, type WaitingCall } from "@/features/results/call-steps-data";
import { requireViewer } from "@/server/viewer";
import { Page } from "@/ui/page";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";

/** What needs a designer in all their tests, and their patterns. */
export async function DesignerHome() {
  const viewer = await requireViewer();
  const [patterns, waiting] = await Promise.all([loadPatterns(), waitingCalls(viewer, new Date())]);
  const isEmpty = patterns.length === 0;
  return (
    <Page title="Home" actions={isEmpty ? null : <NewPatternLinks />}>
      {isEmpty ? (
        <NoPatterns />
      ) : (
        <>
          <Section title="What needs you">
            {waiting.length === 0 ? (
              <p className="text-soft">Nothing needs you now.</p>
            ) : (
              <ul className="grid items-start gap-5 lg:grid-cols-2">
                {waiting.map((call) => (
                  <li key={call.callId}>
                    <StepsOfCall {...call} />
                  </li>
                ))}
              </ul>
            )}
          </Section>
          <Section title="Your patterns" actions={<ArchivedLink patterns={patterns} />}>
            <PatternCards patterns={patterns} />
          </Section>
        </>
      )}
    </Page>
  );
}

function StepsOfCall({ callId, title, steps }: WaitingCall) {
  return (
    <Sheet>
      <h3 className="mb-2 text-xl wrap-anywhere">
        <Link href={callPageHref(callId, "overview")} className="hover:text-thread hover:underline">
          {title}
        </Link>
      </h3>
      <NextStepList callId={callId} steps={steps} />
    </Sheet>
  );
}
