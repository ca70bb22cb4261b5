import type { ReactNode } from "react";
import type { PatternDocument } from "@/engine/pattern";
import { AskedFirst } from "@/ui/asked-first";
import { formatLength } from "@/ui/format-length";
import { Notice } from "@/ui/notice";
import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import { forget } from "../forget-actions";
import type { KeptOfTester } from "../kept-data";
import type { LoadedTester } from "../loaders";

interface KeptViewProps {
  readonly tester: LoadedTester["tester"];
  readonly kept: KeptOfTester;
}

/** What is kept of a tester, who sees it, and how she has it deleted. */
export function KeptView({ tester, kept }: KeptViewProps) {
  const { call, unit, revision } = tester;
  return (
    <>
      <Section
        title="What is kept"
        intro={
          <>
            Seen by <bdi>{call.designerName}</bdi> and the helpers whom she lets in to this pattern, and by nobody else.
          </>
        }
      >
        <dl className="rounded-sheet border border-line bg-sheet shadow-sheet">
          <Kept label="Name">{kept.name ?? "none"}</Kept>
          <Kept label="E-mail">{kept.email ?? "none"}</Kept>
          <Kept label="Body measurements">{bodyWords(kept.body, revision.document, unit)}</Kept>
          <Kept label="Application">{kept.applied ? "what you said as you applied" : "none"}</Kept>
          <Kept label="Milestones">{times(kept.milestones, "word", "words")}</Kept>
          <Kept label="Questions and trouble spots">
            {times(kept.questions, "question", "questions")}, {times(kept.troubles, "trouble spot", "trouble spots")}
          </Kept>
          <Kept label="Report">
            {kept.reports === 0 ? "nothing sent" : `sent, ${times(kept.reports, "version", "versions")}`}
            {kept.hasDraft ? "; what you have typed so far" : ""}
          </Kept>
          <Kept label="The designer’s note">{kept.hasNote ? "a note about you, for the designer alone" : "none"}</Kept>
        </dl>
      </Section>
      <Section title="Have it deleted">
        <Deletion tester={tester} kept={kept} />
      </Section>
    </>
  );
}

function Kept({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <div className="border-b border-line px-4 py-2.5 last:border-b-0 sm:grid sm:grid-cols-[13rem_1fr] sm:gap-4">
      <dt className="text-soft">{label}</dt>
      <dd className="min-w-0 wrap-anywhere numbers">
        <bdi>{children}</bdi>
      </dd>
    </div>
  );
}

function Deletion({ tester: { testerId, code, size }, kept }: KeptViewProps) {
  const hasReport = kept.reports > 0;
  return (
    <>
      <p className="mb-3">
        {hasReport
          ? `Your name, e-mail, body measurements, application, milestones, trouble spots, unanswered questions, the designer’s note about you and all that you wrote in your report are deleted. The numbers of your report stay, under “${code}”, for what was reckoned rests on them. A question that was answered for all testers stays too, without your name.`
          : "You have sent no report, so all that is kept of you in this call is deleted, the designer’s note about you with it, and your place goes to somebody else. A question that was answered for all testers stays, without your name."}
      </p>
      {hasReport && kept.othersInSize === 0 ? (
        <Notice title="Your numbers would not be anonymous">
          You are the only one with a report in size <bdi>{size.label}</bdi>: whoever knows that can tell that these
          numbers are yours.
        </Notice>
      ) : null}
      {hasReport ? (
        <p className="mb-3 text-soft">
          Those who know this call may still guess whose numbers they are; the fewer testers a size has, the easier.
        </p>
      ) : null}
      <AskedFirst question="Delete it">
        <p>This cannot be undone. From then on nobody comes in to this test, you neither.</p>
        <OneButtonForm action={forget} sends={{ testerId }} button="Delete for good" waiting="Deleting …" look="main" />
      </AskedFirst>
    </>
  );
}

function bodyWords(body: KeptOfTester["body"], { bodyMeasurements }: PatternDocument, unit: "cm" | "in"): string {
  const told = Object.entries(body).map(([id, cm]) => {
    const label = bodyMeasurements?.find((measurement) => measurement.id === id)?.label ?? id;
    return `${label} ${formatLength(cm, unit)}`;
  });
  return told.length === 0 ? "none" : told.join(", ");
}

function times(count: number, one: string, many: string): string {
  if (count === 0) return `no ${many}`;
  return count === 1 ? `1 ${one}` : `${count} ${many}`;
}
