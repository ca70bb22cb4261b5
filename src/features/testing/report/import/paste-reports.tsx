"use client";

import { useRouter } from "next/navigation";
import { useState } from "react";
import { columnCount } from "@/engine/tables";
import type { PatternDocument } from "@/engine/pattern";
import { callPageHref } from "@/features/calls/call-pages";
import { AskedBack } from "@/ui/asked-back";
import { Notice } from "@/ui/notice";
import { PasteField } from "@/ui/paste-field";
import { addPastedReports } from "./paste-actions";
import { PasteInchesQuestion } from "./paste-inches-question";
import { PasteUnread } from "./paste-unread";
import { PasteReportFields, type OpenCall } from "./paste-report-fields";
import { placedInReports } from "./placed-in-reports";
import { PasteReportTable } from "./paste-report-table";
import { PasteReportsPreview } from "./paste-reports-preview";
import { usePasteReports, type PasteReports as State } from "./paste-reports-state";

interface PasteReportsProps {
  readonly patternId: string;
  readonly pattern: PatternDocument;
  readonly calls: readonly OpenCall[];
  readonly keptUnder: string;
}

/** The second of two pasted tables: the testers' reports, one tester per row. */
export function PasteReports({ patternId, pattern, calls, keptUnder }: PasteReportsProps) {
  const state = usePasteReports(pattern, keptUnder);
  const { text, view: cells } = state;
  return (
    <div className="space-y-10">
      <PasteField
        id="reports"
        label="Your testers’ reports"
        hint="Copy the answers from your form, one row per tester with the questions in the first row, or choose the form’s CSV file."
        value={text}
        understood={cells.length === 0 ? "" : `${cells.length} rows and ${columnCount(cells)} columns.`}
        onChange={state.paste}
      />
      {state.excess !== null ? (
        <Notice tone="problem" title="This table is too large">
          {state.excess}
        </Notice>
      ) : cells.length === 0 ? (
        <p className="max-w-2xl text-soft">
          Only the size is required. Name, swatch, hook or needle size, finished measurements in centimetres or inches,
          yarn, fit, comments, and the stitches and rows worked may be missing. Names and comments stay with you and are
          never part of a file you export.
        </p>
      ) : (
        <Understood state={state} patternId={patternId} pattern={pattern} calls={calls} />
      )}
    </div>
  );
}

/** What was read from the reports, down to the button that adds them. */
function Understood({
  state,
  patternId,
  pattern,
  calls,
}: Omit<PasteReportsProps, "keptUnder"> & { readonly state: State }) {
  const { view: cells, choices, table } = state;
  const [callId, setCallId] = useState(calls[0]?.callId ?? null);
  const [tried, setTried] = useState(false);
  const [confirmed, setConfirmed] = useState(false);
  const { send, sending, failure } = useSending(state, { patternId, callId, confirmed });
  const faults = table.ok ? [] : table.faults;
  const inTable = faults.filter(({ field }) => field === undefined);
  const questions = table.ok ? table.questions : [];

  function press() {
    setTried(true);
    if (faults.length > 0)
      return document.getElementById(inTable.length > 0 ? "report-faults" : "reports-over")?.focus();
    if (questions.length > 0 && !confirmed) return document.getElementById("report-questions")?.focus();
    void send();
  }

  return (
    <>
      <section aria-labelledby="columns-title">
        <h2 id="columns-title" className="mb-4">
          What the columns hold
        </h2>
        <PasteReportFields
          choices={choices}
          faults={faults}
          calls={calls}
          callId={callId}
          onCall={setCallId}
          onChange={state.setChoices}
        />
        <PasteUnread state={state} faults={inTable} />
        <PasteInchesQuestion state={state} questions={questions} />
        <PasteReportTable state={state} pattern={pattern} faults={inTable} questions={questions} />
      </section>
      <AskedBack
        id="report-questions"
        items={questions.map((question) => placedInReports(cells, choices, question))}
        insists={tried}
        confirmed={confirmed}
        onConfirm={setConfirmed}
      />
      {failure === null ? null : (
        <Notice tone="problem" title="The reports were not added">
          {failure}
        </Notice>
      )}
      <PasteReportsPreview state={state} pattern={pattern} isSending={sending} onSend={press} />
    </>
  );
}

/** Sends the table, and opens the differences once it has been added. */
function useSending(
  { text, choices, tableKey, clear }: State,
  given: { readonly patternId: string; readonly callId: string | null; readonly confirmed: boolean },
) {
  const router = useRouter();
  const [sending, setSending] = useState(false);
  const [failure, setFailure] = useState<string | null>(null);
  async function send() {
    setSending(true);
    setFailure(null);
    const result = await addPastedReports({
      ...given,
      text,
      tableKey,
      choices: { ...choices, columns: [...choices.columns] },
    });
    if (result.status === "failed") {
      setSending(false);
      setFailure(result.says);
      return;
    }
    clear();
    router.push(callPageHref(result.callId, "differences"));
  }
  return { send, sending, failure };
}
