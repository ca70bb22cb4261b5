import Link from "next/link";
import type { ReactNode } from "react";
import type { TesterRead } from "../../home/data";
import { dueWords } from "../../home/due-copy";
import { ButtonLink } from "@/ui/button";
import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import { CreditForm } from "../../thanks/credit-form";
import type { FilledReport } from "../filled-report";
import { OpenPoints } from "./open-points";
import { ReportView } from "./report-view";

interface ReportSentProps {
  readonly tester: Pick<
    TesterRead,
    "testerId" | "name" | "creditName" | "revisionNumber" | "call" | "dates" | "timeZone" | "promised"
  >;
  readonly report: FilledReport;
  readonly version: number;
  /** When this version was sent, in words. */
  readonly sentOn: string;
  /** The newest revision, where it is newer than the one that they followed. */
  readonly newer: { readonly number: number; readonly reason: string } | null;
  /** What it changes in their size. */
  readonly changes: ReactNode;
  readonly now: Date;
}

/** The end of a report that is sent and not changed since: thanks, what happens next, and how to change it. */
export function ReportSent({ tester, report, version, sentOn, newer, changes, now }: ReportSentProps) {
  const home = `/testing/${tester.testerId}`;
  return (
    <>
      <Notice tone="done" title={`Your report is sent, version ${version}. Thank you.`}>
        <bdi>{tester.call.designerName}</bdi> received it on {sentOn}.
      </Notice>
      {report.ended === null ? <OpenPoints isSent report={report} /> : null}
      <Section title="What happens next">
        <WhatHappensNext tester={tester} now={now} />
      </Section>
      {newer === null ? null : (
        <Section title="What has changed since">
          <p className="mb-3 wrap-anywhere">
            The pattern is at revision {newer.number} now; you followed revision {tester.revisionNumber}.
            {newer.reason === "" ? null : (
              <>
                {" "}
                Reason: <bdi>{newer.reason}</bdi>
              </>
            )}
          </p>
          <h3 className="mb-1.5">In your size</h3>
          {changes}
        </Section>
      )}
      {tester.name === null ? null : (
        <Section title="Your name in the pattern">
          <CreditForm
            testerId={tester.testerId}
            name={tester.name}
            creditName={tester.creditName}
            designerName={tester.call.designerName}
          />
        </Section>
      )}
      {report.ended === null ? (
        <Section title="Change or add something">
          <p className="mb-4">
            Open any step and change it. Your changes are saved as you type; come back to this page and send them. Every
            version you send is stored.
          </p>
          <ButtonLink href={home} look="quiet">
            Back to your test
          </ButtonLink>
        </Section>
      ) : null}
      <details>
        <summary className="text-link inline-flex min-h-11 items-center">What you sent</summary>
        <div className="mt-4">
          <ReportView report={report} reader="tester" />
        </div>
      </details>
    </>
  );
}

function WhatHappensNext({ tester, now }: Pick<ReportSentProps, "tester" | "now">) {
  const { call, dates, timeZone, testerId, promised } = tester;
  const designer = <bdi>{call.designerName}</bdi>;
  const reportBy = dates === null ? null : dueWords(dates.reportBy.at, { zone: timeZone, now });
  return (
    <>
      <ul className="list-disc space-y-1.5 pl-5 wrap-anywhere">
        <li>
          {designer} compares the reports of all testers with the pattern, and asks you if something in yours is
          unclear.
        </li>
        <li>
          You find the answers to your questions{" "}
          <Link href={`/testing/${testerId}/pattern`} prefetch={false} className="text-link">
            in the pattern
          </Link>
          , where you asked.
        </li>
        {reportBy === null ? null : (
          <li>
            Reports are due by <span className="numbers">{reportBy.day}</span>; until the test is closed you can still
            change yours.
          </li>
        )}
      </ul>
      {promised === "" ? null : (
        <>
          <h3 className="mt-5 mb-1.5">What you were promised</h3>
          <p className="whitespace-pre-wrap wrap-anywhere">{promised}</p>
        </>
      )}
    </>
  );
}
