"use client";

import { leftOutRows, type MeasurementTable } from "@/engine/tables";
import { Button } from "@/ui/button";
import { nameOfRow } from "./paste-cells";
import type { PasteMeasurements } from "./paste-measurements-state";

interface PastePatternPreviewProps {
  readonly state: PasteMeasurements;
  readonly isSending: boolean;
  readonly onMake: () => void;
}

/** A summary of the new pattern, and the button to create it. */
export function PastePatternPreview({ state, isSending, onMake }: PastePatternPreviewProps) {
  const { table } = state;
  const { name } = state.choices;
  return (
    <div className="flex flex-wrap items-center justify-between gap-x-8 gap-y-4 border-t border-line-strong pt-6">
      <div aria-live="polite" className="max-w-2xl">
        <p className="font-semibold">{sumText(state)}</p>
        {table.ok ? (
          <Made table={table} />
        ) : (
          <p className="text-soft">
            {name === "" ? "The pattern" : `“${name}”`} can be created once you have filled in the fields above and
            fixed the errors.
          </p>
        )}
        <LeftOut state={state} />
      </div>
      <Button disabled={isSending} onClick={onMake}>
        {isSending ? "Creating …" : "Create pattern"}
      </Button>
    </div>
  );
}

function Made({ table }: { readonly table: Extract<MeasurementTable, { ok: true }> }) {
  const { pattern, breakdowns, remarks } = table;
  const [first] = pattern.sizes;
  const last = pattern.sizes.at(-1);
  const workedOut = breakdowns.filter(({ countRow, workedIn }) => countRow === null && workedIn !== "ruler").length;
  return (
    <>
      <p>
        “{pattern.name}” goes from {first?.label} to {last?.label}.
      </p>
      <p className="text-soft">
        {many(pattern.counts.length - workedOut, "count")} from the table
        {workedOut === 0 ? "" : `, ${workedOut} calculated from the finished measurements at your gauge`}. Every size
        has exactly the measurements you published.
      </p>
      {remarks.map((remark) => (
        <p key={remark} className="text-soft">
          {remark}
        </p>
      ))}
    </>
  );
}

/** What is read of the table: "6 of 6 measurements in 5 sizes, 30 of 30 numbers." */
function sumText({ choices, table, view }: PasteMeasurements): string {
  const rows = choices.rows.flatMap(({ kind }, row) => (kind === "measurement" ? [row] : []));
  const faulty = new Set(table.ok ? [] : table.faults.flatMap(({ row, column }) => (column === null ? [] : [row])));
  const unread = table.ok ? [] : table.faults.filter(({ row, column }) => column !== null && rows.includes(row ?? -1));
  const sound = rows.filter((row) => !faulty.has(row)).length;
  const numbers = rows.length * choices.sizeColumns.length;
  const others = many(choices.rows.filter(({ kind }) => kind === "stitches" || kind === "rows").length, "count");
  const bodies = many(choices.rows.filter(({ kind }) => kind === "body").length, "body measurement");
  return view.length === 0
    ? ""
    : `${sound} of ${many(rows.length, "measurement")} in ${many(choices.sizeColumns.length, "size")}, ${numbers - unread.length} of ${many(numbers, "number")}; ${others}, ${bodies}.`;
}

/** Nothing is left out silently: rows with numbers that are ignored, by name. */
function LeftOut({ state: { view, choices } }: { readonly state: PasteMeasurements }) {
  const rows = leftOutRows(view, choices);
  if (rows.length === 0) return null;
  const names = rows.slice(0, MOST_NAMED).map((row) => `row ${row + 1} “${nameOfRow(view, choices, row)}”`);
  const more = rows.length - names.length;
  return (
    <p className="text-soft">
      Ignored: {names.join(", ")}
      {more > 0 ? ` and ${more} more` : ""}.
    </p>
  );
}

const MOST_NAMED = 6;

function many(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? "" : "s"}`;
}
