import Link from "next/link";
import type { TesterRead } from "../../home/data";
import { dueWords } from "../../home/due-copy";
import { ButtonLink } from "@/ui/button";
import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import type { FilledReport } from "../filled-report";
import { OpenPoints } from "./open-points";
import { ReportView } from "./report-view";

interface ReportSentProps {
  readonly tester: Pick<TesterRead, "testerId" | "call" | "dates" | "timeZone" | "promised">;
  readonly report: FilledReport;
  readonly version: number;
  /** When this version was sent, in words. */
  readonly sentOn: string;
  readonly now: Date;
}

/** The end of a report that is sent and not changed since: thanks, what happens next, and how to change it. */
export function ReportSent({ tester, report, version, sentOn, now }: ReportSentProps) {
  const home = `/testing/${tester.testerId}`;
  return (
    <>
      <Notice tone="done" title={`Your report is sent, version ${version}. Thank you.`}>
        <bdi>{tester.call.designerName}</bdi> received it on {sentOn}.
      </Notice>
      {report.ended === null ? <OpenPoints report={report} /> : null}
      <Section title="What happens next">
        <WhatHappensNext tester={tester} now={now} />
      </Section>
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
          The answers to your questions stand{" "}
          <Link href={`/testing/${testerId}/pattern`} prefetch={false} className="text-link">
            in the pattern
          </Link>
          , at the place where you asked.
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
