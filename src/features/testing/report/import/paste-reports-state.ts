"use client";

import { useMemo } from "react";
import { z } from "zod";
import type { PatternDocument } from "@/engine/pattern";
import {
  guessReportChoices,
  readReportTable,
  reportChoicesSchema,
  type Cells,
  type ColumnChoice,
  type ReportChoices,
  type ReportTable,
} from "@/engine/tables";
import { parseTableText, withCell } from "@/engine/tables";
import { useStoredText } from "@/ui/use-stored-text";

/** Choices that differ from the guessed ones, and the key of this table. */
const overridesSchema = z.object({
  choices: reportChoicesSchema.nullable(),
  tableKey: z.uuid(),
});

export interface PasteReports {
  readonly text: string;
  readonly cells: Cells;
  readonly choices: ReportChoices;
  readonly table: ReportTable;
  readonly tableKey: string;
  readonly paste: (text: string) => void;
  readonly setColumn: (column: number, choice: ColumnChoice) => void;
  readonly setChoices: (choices: Partial<Pick<ReportChoices, "swatchOver" | "washed" | "headerRow">>) => void;
  readonly setCell: (row: number, column: number, value: string) => void;
  readonly clear: () => void;
}

/** The pasted reports, what is read from them and the choices about them; stored in this tab. */
export function usePasteReports(pattern: PatternDocument, keptUnder: string): PasteReports {
  const [text, storeText] = useStoredText(`paste-reports ${keptUnder}`);
  const [stored, storeOverrides] = useStoredText(`paste-reports choices ${keptUnder}`);
  const overrides = useMemo(() => readOverrides(stored), [stored]);
  const cells = useMemo(() => parseTableText(text), [text]);
  const choices = useMemo(() => overrides?.choices ?? guessReportChoices(cells, pattern), [overrides, cells, pattern]);
  const table = useMemo(() => readReportTable(cells, choices, { pattern }), [cells, choices, pattern]);
  const tableKey = overrides?.tableKey ?? "";
  const storeChoices = (changed: ReportChoices) => storeOverrides(JSON.stringify({ choices: changed, tableKey }));
  return {
    text,
    cells,
    choices,
    table,
    tableKey,
    paste: (next) => {
      storeText(next);
      storeOverrides(next === "" ? "" : JSON.stringify({ choices: null, tableKey: crypto.randomUUID() }));
    },
    setColumn: (column, choice) => storeChoices({ ...choices, columns: choices.columns.with(column, choice) }),
    setChoices: (change) => storeChoices({ ...choices, ...change }),
    setCell: (row, column, value) => {
      storeChoices(choices);
      storeText(withCell(text, { row, column, value }));
    },
    clear: () => {
      storeText("");
      storeOverrides("");
    },
  };
}

function readOverrides(stored: string): z.infer<typeof overridesSchema> | null {
  if (stored === "") return null;
  const parsed = overridesSchema.safeParse(JSON.parse(stored));
  return parsed.success ? parsed.data : null;
}
