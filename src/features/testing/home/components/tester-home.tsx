import Link from "next/link";
import type { ReactNode } from "react";
import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import { NewsList } from "../../news/news-list";
import type { TesterNews } from "../../news/news-loaders";
import { OwnCorrections } from "../../news/own-corrections";
import { RevisionNews } from "../../news/revision-news";
import { OwnReminders } from "../../reminders/own-reminders";
import type { ReminderChoice } from "../../reminders/reminder-choice";
import { nextThing } from "../next-thing";
import type { LoadedTester } from "../loaders";
import { DateList } from "./date-list";
import { MilestonePanel } from "./milestone-panel";
import { NextSheet } from "./next-sheet";
import { StepList } from "./step-list";
import { GoOnButton, StopPanel } from "./stop-panel";

interface TesterHomeProps {
  readonly loaded: LoadedTester;
  readonly news: TesterNews;
  /** What a newer revision changes in their size; null if there is none. */
  readonly differences: ReactNode;
  /** How much yarn their size needs; null if it is not known. */
  readonly yarn: ReactNode;
  /** How often reminders come; null where no mail is sent. */
  readonly reminders: ReminderChoice | null;
  readonly now: Date;
  /** Makes each tap on this page count once. */
  readonly pageKey: string;
}

/** A tester's home page: what is new, the next thing to do, all steps, the dates, and how it is going. */
export function TesterHome({ loaded, news, differences, yarn, reminders, now, pageKey }: TesterHomeProps) {
  const { tester, steps } = loaded;
  const home = `/testing/${tester.testerId}`;
  const isOpen = tester.call.status === "open";
  const { revision } = news;
  return (
    <>
      <NewsList {...{ news, loaded, differences }} />
      <NextSheet home={home} next={nextThing(loaded)} zone={tester.timeZone} now={now}>
        {mayGoOn(tester) ? <GoOnButton testerId={tester.testerId} pageKey={pageKey} /> : null}
      </NextSheet>
      <Section title="All steps">
        <StepList home={home} steps={steps} />
      </Section>
      {news.answered.length === 0 ? null : (
        <Section title="Corrections you answered">
          <OwnCorrections corrections={news.answered} loaded={loaded} />
        </Section>
      )}
      {yarn === null && tester.yarnAsked === "" ? null : (
        <Section title="Yarn">
          {yarn}
          {tester.yarnAsked === "" ? null : (
            <p dir="auto" className="mt-2 whitespace-pre-line wrap-anywhere">
              {tester.yarnAsked}
            </p>
          )}
        </Section>
      )}
      {tester.dates ? (
        <Section title="Dates" intro={<>Time zone: {tester.timeZone.replaceAll("_", " ")}</>}>
          <DateList dates={tester.dates} zone={tester.timeZone} now={now} />
          <p className="mt-2">
            <a href={`${home}/dates.ics`} className="text-link inline-flex min-h-9 items-center">
              Add the dates to your calendar
            </a>
          </p>
        </Section>
      ) : null}
      {reminders === null ? null : <OwnReminders tester={tester} choice={reminders} />}
      {tester.stoppedAt !== null ? (
        isOpen ? null : (
          <Notice title="This test is closed">Nothing more can be sent. What you sent stays as it is.</Notice>
        )
      ) : isOpen ? (
        <Section
          title="How is it going?"
          intro={
            <>
              One tap tells <bdi>{tester.call.designerName}</bdi>; other testers do not see it.
            </>
          }
        >
          <MilestonePanel tester={tester} pageKey={pageKey} />
          <StopPanel tester={tester} pageKey={pageKey} />
        </Section>
      ) : null}
      {revision?.isRead ? (
        <Section title={`Revision ${revision.number}`}>
          <RevisionNews {...{ revision, loaded, differences }} />
        </Section>
      ) : null}
      <Section title="About you">
        <ul className="grid gap-1">
          {tester.hasAccount ? null : (
            <HomeLink href={`${home}/password`}>Set a password to sign in from any device</HomeLink>
          )}
          <HomeLink href={`${home}/your-data`}>Your data, and who looked at it</HomeLink>
          <HomeLink href={`${home}/privacy`}>Privacy notice</HomeLink>
        </ul>
      </Section>
    </>
  );
}

/** They stopped or their spot was opened, and the designer did not end their test. */
function mayGoOn({ stoppedAt, stoppedByDesigner, call }: LoadedTester["tester"]): boolean {
  return stoppedAt !== null && !stoppedByDesigner && call.status === "open";
}

function HomeLink({ href, children }: { readonly href: string; readonly children: string }) {
  return (
    <li>
      <Link href={href} prefetch={false} className="text-link inline-flex min-h-9 items-center">
        {children}
      </Link>
    </li>
  );
}
