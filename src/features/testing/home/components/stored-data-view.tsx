import Link from "next/link";
import type { ReactNode } from "react";
import type { PatternDocument } from "@/engine/pattern";
import { AskedFirst } from "@/ui/asked-first";
import { formatLength } from "@/ui/format-length";
import { Notice } from "@/ui/notice";
import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import { forget } from "../forget-actions";
import type { StoredData } from "../stored-data";
import type { LoadedTester } from "../loaders";

interface StoredDataViewProps {
  readonly tester: LoadedTester["tester"];
  readonly stored: StoredData;
}

interface WholeProps extends StoredDataViewProps {
  /** Who looked at it. */
  readonly looked: ReactNode;
  /** What it may be used for in later tests. */
  readonly habits: ReactNode;
}

/** What is stored about a tester, who sees it, and how to delete it. */
export function StoredDataView({ tester, stored, looked, habits }: WholeProps) {
  const { testerId, call, unit, revision } = tester;
  return (
    <>
      <Section
        title="What is stored"
        intro={
          <>
            Only <bdi>{call.designerName}</bdi> and the helpers they share this pattern with can see this. What it is
            for and how long it is stored is in the{" "}
            <Link href={`/testing/${testerId}/privacy`} className="text-link">
              privacy notice
            </Link>
            .
          </>
        }
      >
        <dl className="rounded-sheet border border-line bg-sheet shadow-sheet">
          <StoredEntry label="Name">{stored.name ?? "none"}</StoredEntry>
          <StoredEntry label="E-mail">{stored.email ?? "none"}</StoredEntry>
          <StoredEntry label="Name in the pattern">
            {stored.creditName === null ? "not said yet" : stored.creditName || "not to be named"}
          </StoredEntry>
          <StoredEntry label="Body measurements">{bodyWords(stored.body, revision.document, unit)}</StoredEntry>
          <StoredEntry label="Application">{stored.applied ? "what you sent when you applied" : "none"}</StoredEntry>
          {stored.isWornByChild ? <StoredEntry label="The garment">made for a child</StoredEntry> : null}
          <StoredEntry label="Progress updates">{times(stored.milestones, "update", "updates")}</StoredEntry>
          <StoredEntry label="Questions and trouble spots">
            {times(stored.questions, "question", "questions")},{" "}
            {times(stored.troubles, "trouble spot", "trouble spots")}
          </StoredEntry>
          <StoredEntry label="Asked about your numbers">
            {times(stored.numberQuestions, "question", "questions")}
          </StoredEntry>
          <StoredEntry label="Corrections">{times(stored.correctionAnswers, "answer", "answers")}</StoredEntry>
          <StoredEntry label="Marked as read">
            {times(stored.marks, "correction or answer", "corrections and answers")}
          </StoredEntry>
          <StoredEntry label="E-mail about this test">
            {times(stored.messages, "message", "messages")}
            {stored.messages === 0 ? "" : "; the words of each are deleted 14 days after it was sent"}
          </StoredEntry>
          <StoredEntry label="Reminders">
            {REMINDED[stored.reminders]}; {times(stored.sentReminders, "reminder", "reminders")} sent
          </StoredEntry>
          <StoredEntry label="Photos">{times(stored.photos, "photo", "photos")}</StoredEntry>
          <StoredEntry label="Report">
            {stored.reports === 0 ? "nothing sent" : `sent, ${times(stored.reports, "version", "versions")}`}
            {stored.hasDraft ? "; a draft" : ""}
          </StoredEntry>
          <StoredEntry label="From your earlier tests">
            {stored.hasRecord ? "how your tape and your garments came out in them, as you allowed there" : "nothing"}
          </StoredEntry>
          <StoredEntry label="The designer’s note">
            {stored.hasNote ? "a note about you that only the designer and their helpers see" : "none"}
          </StoredEntry>
          <StoredEntry label="What you got for testing">
            {stored.hasReward
              ? "what the designer noted: the finished pattern, your name in it, a payment"
              : "nothing noted"}
          </StoredEntry>
        </dl>
      </Section>
      <Section title="Who looked at it" intro="The designer and their helpers, by day, in the last year.">
        {looked}
      </Section>
      {habits}
      <Section
        title="Download your data"
        intro="One file with everything that is stored about you in this test, and the addresses of your photos."
      >
        <a href={`/testing/${testerId}/your-data/download`} download className="button button-quiet">
          Download your data
        </a>
      </Section>
      <Section title="Delete your data">
        <Deletion tester={tester} stored={stored} />
      </Section>
    </>
  );
}

const REMINDED: Readonly<Record<StoredData["reminders"], string>> = {
  all: "when something is due",
  weekly: "once a week",
  none: "never",
};

function StoredEntry({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <div className="border-b border-line px-4 py-2.5 last:border-b-0 sm:grid sm:grid-cols-[13rem_1fr] sm:gap-4">
      <dt className="text-soft">{label}</dt>
      <dd className="min-w-0 wrap-anywhere numbers">
        <bdi>{children}</bdi>
      </dd>
    </div>
  );
}

function Deletion({ tester: { testerId, code, size }, stored }: StoredDataViewProps) {
  const hasReport = stored.reports > 0;
  return (
    <>
      <p className="mb-3">
        {hasReport
          ? `This deletes your name, e-mail, body measurements, application, progress updates, photos, trouble spots, unanswered questions, what was asked about your numbers, your answers to corrections, what you marked as read and e-mail about this test, the designer’s notes about you and about what you got, and everything you wrote in your own words in your report. The numbers of your report stay, under “${code}”, because the results of the test are calculated from them. A question that was answered for all testers stays too, without your name.`
          : "You have not sent a report, so this deletes everything stored about you in this test, including the designer’s note about you. Your spot goes to somebody else. A question that was answered for all testers stays, without your name."}
      </p>
      {hasReport && stored.othersInSize === 0 ? (
        <Notice title="Your numbers would not be anonymous">
          You are the only one with a report in size <bdi>{size.label}</bdi>: anyone who knows that can tell that these
          numbers are yours.
        </Notice>
      ) : null}
      {hasReport ? (
        <p className="mb-3 text-soft">
          People who know this test may still guess whose numbers they are; the fewer testers a size has, the easier
          that is.
        </p>
      ) : null}
      <AskedFirst question="Delete my data">
        <p>This cannot be undone. Afterwards nobody can open your pages of this test, not even you.</p>
        <OneButtonForm action={forget} sends={{ testerId }} button="Delete for good" waiting="Deleting …" look="main" />
      </AskedFirst>
    </>
  );
}

function bodyWords(body: StoredData["body"], { bodyMeasurements }: PatternDocument, unit: "cm" | "in"): string {
  const entries = Object.entries(body).map(([id, cm]) => {
    const label = bodyMeasurements?.find((measurement) => measurement.id === id)?.label ?? id;
    return `${label} ${formatLength(cm, unit)}`;
  });
  return entries.length === 0 ? "none" : entries.join(", ");
}

function times(count: number, one: string, many: string): string {
  if (count === 0) return `no ${many}`;
  return count === 1 ? `1 ${one}` : `${count} ${many}`;
}
