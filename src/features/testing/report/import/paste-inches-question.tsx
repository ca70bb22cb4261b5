"use client";

import { cellAt, type TableFault } from "@/engine/tables";
import { Button } from "@/ui/button";
import { MessageList } from "@/ui/message-list";
import { placedInReports } from "./placed-in-reports";
import type { PasteReports } from "./paste-reports-state";

interface PasteInchesQuestionProps {
  readonly state: PasteReports;
  readonly questions: readonly TableFault[];
}

/** Answers that would be as the pattern says in the other unit, asked about together. */
export function PasteInchesQuestion({ state, questions }: PasteInchesQuestionProps) {
  return (["in", "cm"] as const).map((unit) => {
    const cells = questions.flatMap((question) => (question.looksLike === unit ? [question] : []));
    if (cells.length === 0) return null;
    const word = unit === "in" ? "inches" : "centimetres";
    return <Question key={unit} state={state} cells={cells} unit={unit} word={word} />;
  });
}

function Question({
  state: { view, choices, setCells },
  cells,
  unit,
  word,
}: {
  readonly state: PasteReports;
  readonly cells: readonly TableFault[];
  readonly unit: "cm" | "in";
  readonly word: string;
}) {
  const changed = cells.flatMap(({ row, column }) =>
    row === null || column === null ? [] : [{ row, column, value: `${cellAt(view, row, column)} ${unit}` }],
  );
  return (
    <MessageList
      id={`reports-in-${unit}`}
      tone="plain"
      title={cells.length === 1 ? `1 answer looks like ${word}` : `${cells.length} answers look like ${word}`}
      items={cells.map((cell) => placedInReports(view, choices, cell))}
    >
      <p className="mt-3">
        <Button look="quiet" onClick={() => setCells(changed)}>
          {cells.length === 1 ? `Read it in ${word}` : `Read them in ${word}`}
        </Button>
      </p>
    </MessageList>
  );
}
