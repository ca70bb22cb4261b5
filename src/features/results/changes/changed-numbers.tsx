import type { ReactNode } from "react";
import type { Size } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { allowanceWords } from "@/ui/format-exact-length";
import { MatrixTable } from "@/ui/matrix-table";
import { Notice } from "@/ui/notice";
import type { ChangedRow, PlanOutcome } from "./plan-outcome";

interface ChangedNumbersProps {
  readonly outcome: PlanOutcome;
  readonly sizes: readonly Size[];
  readonly unit: LengthUnit;
  /** The changes that are the same in every size. */
  readonly changes: ReactNode;
}

/** The instructions to fix, what changes in every size, and the numbers by size. */
export function ChangedNumbers({ outcome, sizes, unit, changes }: ChangedNumbersProps) {
  const { instructions, changedRows } = outcome;
  return (
    <div className="grid gap-5">
      {instructions.map(({ label, size, was, becomes }) => (
        <Notice key={`${label} ${size}`} title={`Fix the instructions for size ${size}`}>
          <p>
            They make {was} of “{label}” where your grading says {becomes}. Sizewright can change numbers but not your
            text. Before you publish, look for what causes it, such as one repeat or increase too many.
          </p>
        </Notice>
      ))}
      {changes}
      {changedRows.length === 0 ? null : (
        <MatrixTable
          label="Numbers that change, by size"
          corner="By size"
          columns={sizes.map(({ id, label }) => ({ key: id, label }))}
          rows={changedRows.map((row) => ({
            key: row.key,
            head: row.label,
            cells: row.bySize.map((side, index) => <Change key={index} {...side} kind={row.kind} unit={unit} />),
          }))}
        />
      )}
    </div>
  );
}

interface ChangeProps {
  readonly was: number | null;
  readonly becomes: number;
  readonly kind: ChangedRow["kind"];
  readonly unit: LengthUnit;
}

function Change({ was, becomes, kind, unit }: ChangeProps) {
  const words = (value: number) => (kind === "count" ? String(value) : allowanceWords(value, unit));
  if (was === becomes) return <span className="text-soft">{words(becomes)}</span>;
  return (
    <>
      {was === null ? null : <span className="text-soft">{words(was)} → </span>}
      <strong>{words(becomes)}</strong>
    </>
  );
}
