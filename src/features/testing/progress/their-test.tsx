import { AskedFirst } from "@/ui/asked-first";
import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import { OwnDaysForm } from "./own-days-form";
import type { DaysOfTester, TheirTest } from "./own-days-data";
import { endTheirTest, giveCallDays, letThemGoOn } from "./person-actions";

interface TheirTestProps {
  readonly sends: { readonly callId: string; readonly testerId: string };
  readonly test: TheirTest;
  /** The call's. */
  readonly timeZone: string;
}

/** What the designer can change about one tester's test: their days, and whether it goes on. */
export function TheirTestSection({ sends, test: { days, ended }, timeZone }: TheirTestProps) {
  if (ended === "by tester") return null;
  const hasDays = ended === null && days !== null;
  return (
    <Section title="Their test" intro={hasDays ? daysWords(days, timeZone) : undefined}>
      {hasDays ? <TheirDays sends={sends} days={days} /> : null}
      <EndOrGoOn sends={sends} isEnded={ended !== null} />
    </Section>
  );
}

function daysWords({ isOwn }: DaysOfTester, timeZone: string): string {
  const whose = isOwn ? "They have days of their own." : "The test’s days apply to them.";
  return `${whose} Time zone: ${timeZone.replaceAll("_", " ")}.`;
}

function TheirDays({ sends, days }: Pick<TheirTestProps, "sends"> & { readonly days: DaysOfTester }) {
  return (
    <>
      <OwnDaysForm key={String(days.isOwn)} {...sends} days={days.days} />
      {days.isOwn ? (
        <OneButtonForm
          action={giveCallDays}
          sends={sends}
          button="Use the test’s days again"
          waiting="One moment …"
          look="plain"
        />
      ) : null}
    </>
  );
}

function EndOrGoOn({ sends, isEnded }: Pick<TheirTestProps, "sends"> & { readonly isEnded: boolean }) {
  if (isEnded)
    return (
      <>
        <p className="mb-3">
          You ended their test. What they sent stays in the results. They can go on as long as their spot is open.
        </p>
        <OneButtonForm action={letThemGoOn} sends={sends} button="Let them go on" waiting="One moment …" />
      </>
    );
  return (
    <div className="mt-4">
      <AskedFirst question="End their test">
        <p>
          They can send nothing more, and read on their page that you ended their test. What they sent stays in the
          results, and their spot is open. You can take this back while it is.
        </p>
        <OneButtonForm action={endTheirTest} sends={sends} button="End their test" waiting="Ending it …" look="main" />
      </AskedFirst>
    </div>
  );
}
