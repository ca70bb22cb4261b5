"use client";

import { useMemo } from "react";
import { z } from "zod";
import {
  choicesOfLayout,
  guessHeaderRow,
  guessMeasurementChoices,
  layoutAt,
  MAX_MEASUREMENT_ROWS,
  measurementChoicesSchema,
  parseTableText,
  readMeasurementTable,
  rowChoiceSchema,
  tooLarge,
  transpose,
  defaultTolerances,
  withCells,
  type Cells,
  type Layout,
  type MeasurementChoices,
  type MeasurementTable,
  type RowChoice,
} from "@/engine/tables";
import { useStoredText } from "@/ui/use-stored-text";

const LAYOUT = { turned: true, headerRow: true, letterColumn: true, labelColumn: true, sizeColumns: true } as const;

/** Choices that replace the guessed ones. */
const overridesSchema = z.object({
  fields: measurementChoicesSchema.omit({ ...LAYOUT, rows: true }).partial(),
  layout: measurementChoicesSchema.pick(LAYOUT).nullable(),
  rows: z.record(z.string(), rowChoiceSchema.partial()),
  /** Idempotency key of the pasted table, so that sending it twice makes one pattern; "" before a table is pasted. */
  tableKey: z.string(),
});

type Overrides = z.infer<typeof overridesSchema>;
export type PatternFields = Overrides["fields"];

const NONE: Overrides = { fields: {}, layout: null, rows: {}, tableKey: "" };

export interface PasteMeasurements {
  readonly text: string;
  /** What is too much about the table, in a sentence; null where it can be read. */
  readonly excess: string | null;
  /** False where the table's unit was taken from its numbers and nobody has said it yet. */
  readonly isUnitKnown: boolean;
  /** The table as shown: turned where its sizes run down. */
  readonly view: Cells;
  readonly choices: MeasurementChoices;
  readonly table: MeasurementTable;
  readonly tableKey: string;
  readonly paste: (text: string) => void;
  readonly setFields: (fields: PatternFields) => void;
  readonly setRow: (row: number, choice: Partial<RowChoice>) => void;
  readonly setLayout: (layout: Partial<Layout>) => void;
  readonly setCell: (row: number, column: number, value: string) => void;
  readonly clear: () => void;
}

/** The pasted table, its interpretation and the designer's choices; stored in this tab. */
export function usePasteMeasurements(keptUnder: string): PasteMeasurements {
  const [text, keepText] = useStoredText(`paste-measurements ${keptUnder}`);
  const [kept, keepOverrides] = useStoredText(`paste-measurements choices ${keptUnder}`);
  const overrides = useMemo(() => readOverrides(kept), [kept]);
  const { cells, excess } = useMemo(() => cellsOf(text), [text]);
  const { choices, isUnitKnown } = useMemo(() => chosen(cells, overrides), [cells, overrides]);
  const table = useMemo(() => readMeasurementTable(cells, choices), [cells, choices]);
  const keep = (next: Overrides) => keepOverrides(JSON.stringify(next));
  const { turned, headerRow, letterColumn, labelColumn, sizeColumns } = choices;
  return {
    text,
    excess,
    isUnitKnown,
    view: turned ? transpose(cells) : cells,
    choices,
    table,
    tableKey: overrides.tableKey,
    paste: (next) => {
      keepText(next);
      keep({ ...NONE, fields: overrides.fields, tableKey: crypto.randomUUID() });
    },
    setFields: (fields) => keep({ ...overrides, fields: { ...overrides.fields, ...fields } }),
    setRow: (row, choice) =>
      keep({ ...overrides, rows: { ...overrides.rows, [row]: { ...overrides.rows[row], ...choice } } }),
    setLayout: (change) => {
      const now = { turned, headerRow, letterColumn, labelColumn, sizeColumns: [...sizeColumns] };
      keep({ ...overrides, layout: changedLayout(cells, now, change), rows: {} });
    },
    setCell: (row, column, value) =>
      keepText(withCells(text, [turned ? { row: column, column: row, value } : { row, column, value }])),
    clear: () => {
      keepText("");
      keepOverrides("");
    },
  };
}

function readOverrides(kept: string): Overrides {
  if (kept === "") return NONE;
  const parsed = overridesSchema.safeParse(JSON.parse(kept));
  return parsed.success ? parsed.data : NONE;
}

/** Longer than the server takes. */
const MAX_TEXT = 900_000;

function cellsOf(text: string): { readonly cells: Cells; readonly excess: string | null } {
  const cells = parseTableText(text);
  const tooLong = `This table has ${text.length.toLocaleString("en")} characters; at most 900,000 can be read at once. Paste only the part with your numbers.`;
  const excess = tooLarge(cells, MAX_MEASUREMENT_ROWS) ?? (text.length > MAX_TEXT ? tooLong : null);
  return { cells: excess === null ? cells : [], excess };
}

function chosen(
  cells: Cells,
  { fields, layout, rows }: Overrides,
): { readonly choices: MeasurementChoices; readonly isUnitKnown: boolean } {
  const { isNamed, ...guessed } =
    layout === null ? guessMeasurementChoices(cells, fields) : choicesOfLayout(cells, layout, fields);
  const choices = {
    ...guessed,
    ...(fields.unit === undefined ? {} : defaultTolerances(fields.unit)),
    ...fields,
    rows: guessed.rows.map((row, index) => ({ ...row, ...rows[index] })),
  };
  return { choices, isUnitKnown: isNamed || fields.unit !== undefined };
}

/** Another heading row or orientation moves everything else too. */
function changedLayout(cells: Cells, now: Layout, change: Partial<Layout>): Overrides["layout"] {
  const turned = change.turned ?? now.turned;
  const moved =
    turned !== now.turned
      ? layoutAt(cells, { turned, headerRow: guessHeaderRow(turned ? transpose(cells) : cells) })
      : change.headerRow !== undefined
        ? layoutAt(cells, { turned, headerRow: change.headerRow })
        : { ...now, ...change };
  return { ...moved, sizeColumns: [...moved.sizeColumns] };
}
