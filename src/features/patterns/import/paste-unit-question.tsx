"use client";

import { cellAt } from "@/engine/tables";
import { Button } from "@/ui/button";
import { Notice } from "@/ui/notice";
import { nameOfRow } from "./paste-cells";
import type { PasteMeasurements } from "./paste-measurements-state";

/** Asked once where no word of the table names its unit. */
export function PasteUnitQuestion({ state }: { readonly state: PasteMeasurements }) {
  const { view, choices, setFields } = state;
  const row = choices.rows.findIndex(({ kind }) => kind === "measurement");
  if (row < 0) return null;
  const { sizeColumns } = choices;
  const [first = 0] = sizeColumns;
  const last = sizeColumns.at(-1) ?? first;
  const guessed = choices.unit === "cm" ? "centimetres" : "inches";
  return (
    <Notice title={`Is this table in ${guessed}?`}>
      <p>
        It names no unit. {nameOfRow(view, choices, row)} goes from {cellAt(view, row, first)} to{" "}
        {cellAt(view, row, last)}, which looks like {guessed}.
      </p>
      <div className="mt-3 flex flex-wrap gap-3">
        <Button look="quiet" onClick={() => setFields({ unit: choices.unit })}>
          Yes, read it in {guessed}
        </Button>
        <Button look="plain" onClick={() => setFields({ unit: choices.unit === "cm" ? "in" : "cm" })}>
          Read it in {choices.unit === "cm" ? "inches" : "centimetres"}
        </Button>
      </div>
    </Notice>
  );
}
