"use client";

import { cellAt, labelOfRow, letterOfRow, type RowChoice, type RowKind } from "@/engine/tables";
import { TABLE_ROW } from "@/ui/table-frame";
import { TableCellText } from "@/ui/table-cell-text";
import { PasteBasisChoice } from "./paste-basis-choice";
import type { PasteMeasurements } from "./paste-measurements-state";
import { cellKey, nameOfRow } from "./paste-cells";

const KINDS: Readonly<Record<RowKind, string>> = {
  measurement: "Finished measurement",
  body: "Body measurement",
  stitches: "Stitches",
  rows: "Rows or rounds",
  "leave out": "Ignore",
};

const SMALL = "min-h-9 rounded border border-line-strong bg-white px-2 py-1 text-sm";

interface PasteMeasurementRowProps {
  readonly state: PasteMeasurements;
  readonly row: number;
  readonly columns: readonly number[];
  readonly said: { readonly faults: ReadonlyMap<string, string>; readonly questions: ReadonlyMap<string, string> };
  /** Cells that have been edited here. */
  readonly opened: ReadonlySet<string>;
  readonly onOpen: (key: string) => void;
}

/** One row of the pasted table with its kind and what it is worked in. */
export function PasteMeasurementRow({ state, row, columns, said, opened, onOpen }: PasteMeasurementRowProps) {
  const { view, choices, setRow, setCell } = state;
  const choice = choices.rows[row];
  if (choice === undefined) return null;
  const name = nameOfRow(view, choices, row) || `Row ${row + 1}`;
  const isOut = choice.kind === "leave out";
  return (
    <tr className={`${TABLE_ROW} ${isOut ? "text-soft" : ""}`}>
      <th
        scope="row"
        className="sticky left-0 z-1 max-w-40 bg-sheet font-normal shadow-[1px_0_0_var(--color-line)] sm:max-w-64"
      >
        <span className="flex gap-2">
          <span className="w-5 shrink-0 text-right text-xs leading-6 text-soft">{row + 1}</span>
          <span>
            <strong className="font-semibold">{letterOfRow(view, choices, row)}</strong>{" "}
            {labelOfRow(view, choices, row)}
          </span>
        </span>
      </th>
      <td>
        <select
          aria-label={`What ${name} is`}
          className={`${SMALL} w-44`}
          value={choice.kind}
          onChange={({ currentTarget }) => setRow(row, { kind: kindOf(currentTarget.value) })}
        >
          {Object.entries(KINDS).map(([kind, label]) => (
            <option key={kind} value={kind}>
              {label}
            </option>
          ))}
        </select>
      </td>
      <td>
        {choice.kind === "measurement" ? (
          <PasteBasisChoice state={state} row={row} choice={choice} name={name} />
        ) : null}
      </td>
      {columns.map((column) => {
        const key = cellKey(row, column);
        const edit = (text: string) => {
          onOpen(key);
          setCell(row, column, text);
        };
        return (
          <td key={column} className="whitespace-nowrap text-right">
            <TableCellText
              text={cellAt(view, row, column)}
              fault={said.faults.get(key)}
              question={said.questions.get(key)}
              name={`${name}, ${cellAt(view, choices.headerRow, column)}`}
              isDim={isOut || !choices.sizeColumns.includes(column)}
              isOpen={opened.has(key)}
              onEdit={edit}
            />
          </td>
        );
      })}
      <RowDetails
        choice={choice}
        name={name}
        onChange={(change) => setRow(row, change)}
        usual={choice.girth ? choices.girthTolerance : choices.otherTolerance}
      />
    </tr>
  );
}

function kindOf(value: string): RowKind {
  return value === "measurement" || value === "body" || value === "stitches" || value === "rows" ? value : "leave out";
}

interface RowDetailsProps {
  readonly choice: RowChoice;
  readonly name: string;
  readonly usual: string;
  readonly onChange: (change: Partial<RowChoice>) => void;
}

/** Unit, girth and tolerance of one row, where it has them. */
function RowDetails({ choice, name, usual, onChange }: RowDetailsProps) {
  const isMeasurement = choice.kind === "measurement";
  return (
    <>
      <td>
        {isMeasurement || choice.kind === "body" ? (
          <select
            aria-label={`Unit of ${name}`}
            className={SMALL}
            value={choice.unit}
            onChange={({ currentTarget }) => onChange({ unit: unitOf(currentTarget.value) })}
          >
            <option value="table">as the table</option>
            <option value="cm">cm</option>
            <option value="in">in</option>
          </select>
        ) : null}
      </td>
      <td>
        {isMeasurement ? (
          <input
            type="checkbox"
            aria-label={`${name} goes around the body`}
            className="size-5 accent-ink"
            checked={choice.girth}
            onChange={({ currentTarget }) => onChange({ girth: currentTarget.checked })}
          />
        ) : null}
      </td>
      <td>
        {isMeasurement ? (
          <input
            aria-label={`Tolerance of ${name}`}
            className={`${SMALL} numbers w-16`}
            placeholder={usual}
            value={choice.tolerance}
            onChange={({ currentTarget }) => onChange({ tolerance: currentTarget.value })}
          />
        ) : null}
      </td>
    </>
  );
}

function unitOf(value: string): RowChoice["unit"] {
  return value === "cm" || value === "in" ? value : "table";
}
