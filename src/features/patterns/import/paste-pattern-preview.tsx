"use client";

import type { MeasurementTable } from "@/engine/tables";
import { Button } from "@/ui/button";

interface PastePatternPreviewProps {
  readonly table: MeasurementTable;
  readonly name: string;
  readonly isSending: boolean;
  readonly onMake: () => void;
}

/** A summary of the new pattern, and the button to create it. */
export function PastePatternPreview({ table, name, isSending, onMake }: PastePatternPreviewProps) {
  return (
    <div className="flex flex-wrap items-center justify-between gap-x-8 gap-y-4 border-t border-line-strong pt-6">
      <div aria-live="polite" className="max-w-2xl">
        {table.ok ? (
          <Made table={table} />
        ) : (
          <p className="text-soft">
            {name === "" ? "The pattern" : `“${name}”`} can be created once you have filled in the fields above and
            fixed the errors.
          </p>
        )}
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
      <p className="font-semibold">
        “{pattern.name}” in {many(pattern.sizes.length, "size")}, {first?.label} to {last?.label}, with{" "}
        {many(pattern.measurements.length, "measurement")}.
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

function many(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? "" : "s"}`;
}
