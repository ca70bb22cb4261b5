"use client";

import type { PatternDocument } from "@/engine/pattern";
import { cellAt, leftOutColumns, type ReportTable } from "@/engine/tables";
import { Button } from "@/ui/button";
import type { PasteReports } from "./paste-reports-state";

interface PasteReportsPreviewProps {
  readonly state: PasteReports;
  readonly pattern: PatternDocument;
  readonly isSending: boolean;
  readonly onSend: () => void;
}

/** A summary of what will be added, and the button that adds it. */
export function PasteReportsPreview({ state, pattern, isSending, onSend }: PasteReportsPreviewProps) {
  const { table } = state;
  return (
    <div className="flex flex-wrap items-center justify-between gap-x-8 gap-y-4 border-t border-line-strong pt-6">
      <div aria-live="polite" className="max-w-3xl">
        <p className="font-semibold">{sumText(table)}</p>
        {table.ok ? (
          <Added table={table} pattern={pattern} />
        ) : (
          <p className="text-soft">Fix the problems above, then you can add the reports.</p>
        )}
        <LeftOut state={state} />
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
  const none = bySize.filter(({ count }) => count === 0).map(({ label }) => label);
  return (
    <>
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

/** "6 of 6 measurements, 15 testers, 88 of 90 readings, 15 swatches." */
function sumText(table: ReportTable): string {
  const { sum } = table;
  if (sum === null) return "";
  const all = (part: number, whole: number, thing: string) =>
    part === whole ? many(part, thing) : `${part} of ${many(whole, thing)}`;
  const parts = [
    `${sum.measurements} of ${many(sum.ofMeasurements, "measurement")}`,
    all(sum.testers, sum.ofTesters, "tester"),
    `${sum.readings} of ${many(sum.ofReadings, "reading")}`,
    ...(table.ok ? imported(table) : []),
  ];
  return `${parts.join(", ")}.`;
}

function imported({ testers }: Extract<ReportTable, { ok: true }>): string[] {
  const count = (of: (tester: (typeof testers)[number]) => number) => testers.reduce((sum, one) => sum + of(one), 0);
  const things: readonly (readonly [string, number])[] = [
    ["swatch", count(({ tester }) => tester.swatches.length)],
    ["amount of yarn", count(({ tester }) => tester.yarn.length)],
    ["answer about the fit", count(({ tester }) => tester.fit?.length ?? 0)],
    ["comment", count(({ comment }) => (comment === "" ? 0 : 1))],
  ];
  return things.flatMap(([thing, number]) => (number === 0 ? [] : [many(number, thing)]));
}

/** Nothing is left out silently: columns with answers that are not imported, by their questions. */
function LeftOut({ state: { view, choices } }: { readonly state: PasteReports }) {
  const columns = leftOutColumns(view, choices);
  if (columns.length === 0) return null;
  return (
    <p className="text-soft wrap-anywhere">
      Not imported:{" "}
      {columns
        .slice(0, MOST_NAMED)
        .map(({ column, answers }) => {
          const heading = cellAt(view, choices.headerRow, column) || `Column ${column + 1}`;
          return `“${heading.length > 40 ? `${heading.slice(0, 39)}…` : heading}” (${many(answers, "answer")})`;
        })
        .join(", ")}
      {columns.length > MOST_NAMED ? ` and ${columns.length - MOST_NAMED} more columns` : ""}.
    </p>
  );
}

const MOST_NAMED = 8;

function many(count: number, thing: string): string {
  const [first = "", ...rest] = thing.split(" ");
  const plural = [first.endsWith("ch") ? `${first}es` : `${first}s`, ...rest].join(" ");
  return `${count} ${count === 1 ? thing : plural}`;
}
