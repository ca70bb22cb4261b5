"use client";

import { useMemo } from "react";
import { z } from "zod";
import type { PatternDocument } from "@/engine/pattern";
import {
  guessReportChoices,
  MAX_ROWS,
  parseTableText,
  readReportTable,
  reportChoicesSchema,
  tooLarge,
  transpose,
  withCells,
  type Cells,
  type ChangedCell,
  type ColumnChoice,
  type ReportChoices,
  type ReportTable,
} from "@/engine/tables";
import { useStoredText } from "@/ui/use-stored-text";

/** Choices that differ from the guessed ones, and the key of this table. */
const overridesSchema = z.object({
  choices: reportChoicesSchema.nullable(),
  tableKey: z.uuid(),
});

export interface PasteReports {
  readonly text: string;
  /** What is too much about the table, in a sentence; null where it can be read. */
  readonly excess: string | null;
  /** The table as shown: turned where its testers run across. */
  readonly view: Cells;
  readonly choices: ReportChoices;
  readonly table: ReportTable;
  readonly tableKey: string;
  readonly paste: (text: string) => void;
  readonly setColumn: (column: number, choice: ColumnChoice) => void;
  readonly setChoices: (choices: Partial<Pick<ReportChoices, "swatchOver" | "washed" | "leaveUnread">>) => void;
  /** Rows and columns of the shown table. */
  readonly setCells: (cells: readonly ChangedCell[]) => void;
  readonly clear: () => void;
}

/** The pasted reports, what is read from them and the choices about them; stored in this tab. */
export function usePasteReports(pattern: PatternDocument, keptUnder: string): PasteReports {
  const [text, storeText] = useStoredText(`paste-reports ${keptUnder}`);
  const [stored, storeOverrides] = useStoredText(`paste-reports choices ${keptUnder}`);
  const overrides = useMemo(() => readOverrides(stored), [stored]);
  const { cells, excess } = useMemo(() => cellsOf(text), [text]);
  const choices = useMemo(() => overrides?.choices ?? guessReportChoices(cells, pattern), [overrides, cells, pattern]);
  const table = useMemo(() => readReportTable(cells, choices, { pattern }), [cells, choices, pattern]);
  const tableKey = overrides?.tableKey ?? "";
  const storeChoices = (changed: ReportChoices) => storeOverrides(JSON.stringify({ choices: changed, tableKey }));
  return {
    text,
    excess,
    view: choices.turned ? transpose(cells) : cells,
    choices,
    table,
    tableKey,
    paste: (next) => {
      storeText(next);
      storeOverrides(next === "" ? "" : JSON.stringify({ choices: null, tableKey: crypto.randomUUID() }));
    },
    setColumn: (column, choice) => storeChoices({ ...choices, columns: choices.columns.with(column, choice) }),
    setChoices: (change) => storeChoices({ ...choices, ...change }),
    setCells: (changed) => {
      storeChoices(choices);
      const own = changed.map(({ row, column, value }) =>
        choices.turned ? { row: column, column: row, value } : { row, column, value },
      );
      storeText(withCells(text, own));
    },
    clear: () => {
      storeText("");
      storeOverrides("");
    },
  };
}

/** Longer than the server takes. */
const MAX_TEXT = 900_000;

function cellsOf(text: string): { readonly cells: Cells; readonly excess: string | null } {
  const cells = parseTableText(text);
  const tooLong = `This table has ${text.length.toLocaleString("en")} characters; at most 900,000 can be read at once. Paste only the columns that are needed.`;
  const excess = tooLarge(cells, MAX_ROWS) ?? (text.length > MAX_TEXT ? tooLong : null);
  return { cells: excess === null ? cells : [], excess };
}

function readOverrides(stored: string): z.infer<typeof overridesSchema> | null {
  if (stored === "") return null;
  const parsed = overridesSchema.safeParse(JSON.parse(stored));
  return parsed.success ? parsed.data : null;
}
