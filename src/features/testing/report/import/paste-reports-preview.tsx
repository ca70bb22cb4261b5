"use client";

import type { PatternDocument } from "@/engine/pattern";
import type { ReportTable } from "@/engine/tables";
import { Button } from "@/ui/button";

interface PasteReportsPreviewProps {
  readonly table: ReportTable;
  readonly pattern: PatternDocument;
  readonly isSending: boolean;
  readonly onSend: () => void;
}

/** A summary of what will be added, and the button that adds it. */
export function PasteReportsPreview({ table, pattern, isSending, onSend }: PasteReportsPreviewProps) {
  return (
    <div className="flex flex-wrap items-center justify-between gap-x-8 gap-y-4 border-t border-line-strong pt-6">
      <div aria-live="polite" className="max-w-3xl">
        {table.ok ? (
          <Added table={table} pattern={pattern} />
        ) : (
          <p className="text-soft">Fix the problems above, then you can add the reports.</p>
        )}
      </div>
      <Button disabled={isSending} onClick={onSend}>
        {isSending ? "Adding …" : "Add reports and see differences"}
      </Button>
    </div>
  );
}

function Added({
  table: { testers, remarks },
  pattern,
}: {
  readonly table: Extract<ReportTable, { ok: true }>;
  readonly pattern: PatternDocument;
}) {
  const bySize = pattern.sizes.map(({ id, label }) => ({
    label,
    count: testers.filter(({ tester }) => tester.size === id).length,
  }));
  const readings = testers.reduce((sum, { tester }) => sum + tester.readings.length, 0);
  const swatches = testers.reduce((sum, { tester }) => sum + tester.swatches.length, 0);
  const none = bySize.filter(({ count }) => count === 0).map(({ label }) => label);
  return (
    <>
      <p className="font-semibold">
        {many(testers.length, "tester")}, {many(readings, "measurement")} and {many(swatches, "swatch")}.
      </p>
      <p className="numbers text-soft">
        By size:{" "}
        {bySize
          .filter(({ count }) => count > 0)
          .map(({ label, count }) => `${label} ${count}`)
          .join(", ")}
        .{none.length > 0 ? ` None in ${none.join(", ")}.` : ""}
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
  const plural = thing.endsWith("ch") ? `${thing}es` : `${thing}s`;
  return `${count} ${count === 1 ? thing : plural}`;
}
