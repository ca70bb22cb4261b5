"use client";

import { memo } from "react";
import type { EditField, EditRemark } from "@/engine/editing";
import { own } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { formatExactLength } from "@/ui/format-exact-length";
import { MatrixTable } from "@/ui/matrix-table";
import { useTypedEarly } from "@/ui/use-typed-early";

export interface FieldRemarks {
  readonly faults: ReadonlyMap<string, string>;
  readonly askedBack: ReadonlyMap<string, EditRemark & { readonly meant: boolean }>;
}

interface EditTableProps {
  readonly label: string;
  readonly corner: string;
  readonly fields: readonly EditField[];
  readonly sizes: readonly { readonly id: string; readonly label: string }[];
  readonly typed: Readonly<Record<string, string>>;
  readonly unit: LengthUnit;
  readonly remarks: FieldRemarks;
  readonly onType: (field: EditField, text: string) => void;
  readonly onMeant: (path: string, meant: boolean) => void;
}

/** Inputs for the numbers of one kind, sizes across; each with what is to be said of it right below. */
export function EditTable({ label, corner, fields, sizes, typed, unit, remarks, onType, onMeant }: EditTableProps) {
  const ids = [...new Set(fields.map(({ id }) => id))];
  const groups = ids.map((id) => [id, fields.filter((field) => field.id === id)] as const);
  const rows = groups.map(([id, group]) => ({
    key: id,
    head: group[0]?.size === null ? `${group[0].label}, in every size` : group[0]?.label,
    cells: group.map((field) => (
      <EditCell
        key={field.path}
        field={field}
        text={own(typed, field.path)}
        unit={unit}
        fault={remarks.faults.get(field.path)}
        question={remarks.askedBack.get(field.path)?.says}
        meant={remarks.askedBack.get(field.path)?.meant ?? false}
        onType={onType}
        onMeant={onMeant}
      />
    )),
  }));
  return (
    <MatrixTable
      label={label}
      corner={corner}
      columns={
        fields.every(({ size }) => size === null)
          ? [{ key: "all", label: "In every size" }]
          : sizes.map((size) => ({ key: size.id, label: size.label }))
      }
      rows={rows}
    />
  );
}

/** The number as it stands in the revision, as one would type it. */
export function standingText({ kind, value }: EditField, unit: LengthUnit): string {
  if (value === undefined) return "";
  return kind === "count" ? String(value) : formatExactLength(value, unit);
}

interface EditCellProps {
  readonly field: EditField;
  readonly text: string | undefined;
  readonly unit: LengthUnit;
  readonly fault: string | undefined;
  readonly question: string | undefined;
  readonly meant: boolean;
  readonly onType: (field: EditField, text: string) => void;
  readonly onMeant: (path: string, meant: boolean) => void;
}

const EditCell = memo(function EditCell(props: EditCellProps) {
  const { field, text, unit, fault, question, meant, onType, onMeant } = props;
  const id = `edit-${field.path}`;
  const isEdited = text !== undefined;
  const shown = text ?? standingText(field, unit);
  const input = useTypedEarly<HTMLInputElement>(shown, (typed) => onType(field, typed));
  return (
    <div className={`inline-block text-left ${fault || question ? "w-36" : "w-20"}`}>
      <input
        ref={input}
        id={id}
        aria-label={`${field.label}, ${field.size?.label ?? "all sizes"}`}
        aria-invalid={fault !== undefined}
        aria-describedby={`${id}-says`}
        inputMode={field.kind === "count" ? "numeric" : "text"}
        autoComplete="off"
        value={shown}
        onChange={({ target }) => onType(field, target.value)}
        className={`numbers min-h-11 w-20 rounded-md border px-2 text-right aria-invalid:border-2 aria-invalid:border-thread ${isEdited ? "border-ink bg-thread-tint font-semibold" : "border-line-strong bg-white"}`}
      />
      <div id={`${id}-says`} aria-live="polite" className="text-sm">
        {fault ? <p className="mt-1 font-semibold text-thread">▲ {fault}</p> : null}
        {question && !fault ? (
          <label className="mt-1 block">
            {question}
            <span className="mt-1 flex min-h-6 items-center gap-2 font-semibold">
              <input type="checkbox" checked={meant} onChange={({ target }) => onMeant(field.path, target.checked)} />
              Yes, it is meant
            </span>
          </label>
        ) : null}
        {isEdited && !fault && !question ? (
          <p className="mt-0.5 text-right text-soft">was {standingText(field, unit) || "empty"}</p>
        ) : null}
      </div>
    </div>
  );
});
