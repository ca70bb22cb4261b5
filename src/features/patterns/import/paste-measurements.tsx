"use client";

import { useState } from "react";
import { columnCount, type TableFault } from "@/engine/tables";
import { AskedBack } from "@/ui/asked-back";
import { Notice } from "@/ui/notice";
import { PasteField } from "@/ui/paste-field";
import { MessageList } from "@/ui/message-list";
import { makePastedPattern, type MadePattern } from "./paste-actions";
import { PasteExample } from "./paste-example";
import { PasteLayoutChoices } from "./paste-layout-choices";
import { PasteMade } from "./paste-made";
import { PasteMeasurementTable } from "./paste-measurement-table";
import { usePasteMeasurements, type PasteMeasurements as State } from "./paste-measurements-state";
import { PastePatternFields } from "./paste-pattern-fields";
import { PastePatternPreview } from "./paste-pattern-preview";
import { PasteUnitQuestion } from "./paste-unit-question";
import { placed } from "./paste-cells";

/** The first of two pasted tables: finished measurements by size become a pattern. */
export function PasteMeasurements({ keptUnder }: { readonly keptUnder: string }) {
  const state = usePasteMeasurements(keptUnder);
  const [made, setMade] = useState<Extract<MadePattern, { status: "made" }> | null>(null);
  if (made !== null) return <PasteMade patternId={made.patternId} name={made.name} />;
  const { text, view } = state;
  return (
    <div className="space-y-10">
      <PasteField
        id="measurements"
        label="Your finished measurements"
        hint="Copy the table from your spreadsheet, with a row per measurement and a column per size, and paste it here. It can include stitch and row counts and body measurements."
        value={text}
        understood={view.length === 0 ? "" : `${view.length} rows and ${columnCount(view)} columns.`}
        onChange={state.paste}
      />
      {state.excess !== null ? (
        <Notice tone="problem" title="This table is too large">
          {state.excess}
        </Notice>
      ) : view.length === 0 ? (
        <PasteExample />
      ) : (
        <Understood
          state={state}
          onMade={(result) => {
            state.clear();
            setMade(result);
          }}
        />
      )}
    </div>
  );
}

interface UnderstoodProps {
  readonly state: State;
  readonly onMade: (made: Extract<MadePattern, { status: "made" }>) => void;
}

/** The interpreted table, from the pattern's own fields down to the button. */
function Understood({ state, onMade }: UnderstoodProps) {
  const { text, choices, table, tableKey, view } = state;
  const [tried, setTried] = useState(false);
  const [confirmed, setConfirmed] = useState(false);
  const [sending, setSending] = useState(false);
  const [failure, setFailure] = useState<string | null>(null);
  const faults = table.ok ? [] : table.faults;
  const inTable = faults.filter(({ field }) => field === undefined);
  const questions = table.ok ? table.questions : [];

  async function make() {
    setTried(true);
    setFailure(null);
    if (faults.length > 0) return focusFirst(faults);
    if (questions.length > 0 && !confirmed) return document.getElementById("measurement-questions")?.focus();
    setSending(true);
    const result = await makePastedPattern({
      text,
      choices: { ...choices, rows: [...choices.rows], sizeColumns: [...choices.sizeColumns] },
      confirmed,
      tableKey,
    });
    setSending(false);
    if (result.status === "made") onMade(result);
    else setFailure(result.says);
  }

  return (
    <>
      <PastePatternFields choices={choices} faults={faults} tried={tried} onChange={state.setFields} />
      <section aria-labelledby="rows-title">
        <h2 id="rows-title" className="mb-2">
          Your table
        </h2>
        {state.isUnitKnown ? null : <PasteUnitQuestion state={state} />}
        <PasteLayoutChoices view={view} choices={choices} onLayout={state.setLayout} onFields={state.setFields} />
        {inTable.length === 0 ? null : (
          <MessageList
            id="measurement-faults"
            tone="problem"
            title={inTable.length === 1 ? "One thing to fix" : `${inTable.length} things to fix`}
            items={inTable.map((fault) => placed(view, choices, fault))}
          />
        )}
        <PasteMeasurementTable state={state} faults={inTable} questions={questions} />
      </section>
      <AskedBack
        id="measurement-questions"
        items={questions.map((question) => placed(view, choices, question))}
        insists={tried}
        confirmed={confirmed}
        onConfirm={setConfirmed}
      />
      {failure === null ? null : (
        <Notice tone="problem" title="The pattern was not created">
          {failure}
        </Notice>
      )}
      <PastePatternPreview state={state} isSending={sending} onMake={make} />
    </>
  );
}

/** Moves to the first thing to fix. */
function focusFirst(faults: readonly TableFault[]): void {
  const field = faults.find((fault) => fault.field !== undefined)?.field;
  document.getElementById(field === undefined ? "measurement-faults" : `pattern-${field}`)?.focus();
}
