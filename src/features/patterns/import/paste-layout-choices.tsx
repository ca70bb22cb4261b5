"use client";

import { useState, type ReactNode } from "react";
import { cellAt, columnCount, type Cells, type Layout, type MeasurementChoices } from "@/engine/tables";
import type { PatternFields } from "./paste-measurements-state";

interface PasteLayoutChoicesProps {
  readonly view: Cells;
  readonly choices: MeasurementChoices;
  readonly onLayout: (layout: Partial<Layout>) => void;
  readonly onFields: (fields: PatternFields) => void;
}

const ROWS_OFFERED = 30;

/** How the table was read, in one sentence, and choices to correct that. */
export function PasteLayoutChoices({ view, choices, onLayout, onFields }: PasteLayoutChoicesProps) {
  const [isOpen, setOpen] = useState(false);
  const { turned, headerRow, sizeColumns, unit, girthTolerance, otherTolerance } = choices;
  const unitWord = unit === "cm" ? "centimetres" : "inches";
  return (
    <div className="mb-4 mt-1">
      <div className="flex flex-wrap items-center gap-x-4 gap-y-1 text-soft">
        <p>
          {sizeColumns.length} sizes, read in {unitWord}. Tolerance for girths: {girthTolerance || "?"} {unit}, for the
          rest: {otherTolerance || "?"} {unit}.
        </p>
        <button
          type="button"
          aria-expanded={isOpen}
          onClick={() => setOpen(!isOpen)}
          className="text-link min-h-9 font-semibold"
        >
          {isOpen ? "Done" : "Change how it is read"}
        </button>
      </div>
      {isOpen ? (
        <div className="mt-3 grid gap-4 rounded-sheet border border-line p-4 sm:grid-cols-2 lg:grid-cols-4">
          <Choice label="Numbers are in">
            <select
              className="control"
              value={unit}
              onChange={({ currentTarget }) => onFields({ unit: currentTarget.value === "in" ? "in" : "cm" })}
            >
              <option value="cm">centimetres</option>
              <option value="in">inches</option>
            </select>
          </Choice>
          <Typed
            label={`Tolerance for girths, ${unit}`}
            value={girthTolerance}
            onChange={(value) => onFields({ girthTolerance: value })}
          />
          <Typed
            label={`Tolerance for the rest, ${unit}`}
            value={otherTolerance}
            onChange={(value) => onFields({ otherTolerance: value })}
          />
          <Choice label="Sizes run">
            <select
              className="control"
              value={String(turned)}
              onChange={({ currentTarget }) => onLayout({ turned: currentTarget.value === "true" })}
            >
              <option value="false">across, one per column</option>
              <option value="true">down, one per row</option>
            </select>
          </Choice>
          <Choice label="Sizes are in">
            <select
              className="control"
              value={headerRow}
              onChange={({ currentTarget }) => onLayout({ headerRow: Number(currentTarget.value) })}
            >
              {view.slice(0, ROWS_OFFERED).map((cells, row) => (
                <option key={row} value={row}>
                  {`Row ${row + 1}: ${cells
                    .filter((text) => text !== "")
                    .join(" ")
                    .slice(0, 40)}`}
                </option>
              ))}
            </select>
          </Choice>
          <ColumnSelect
            label="Letters are in"
            view={view}
            choices={choices}
            value={choices.letterColumn}
            onChange={(letterColumn) => onLayout({ letterColumn })}
          />
          <ColumnSelect
            label="Names are in"
            view={view}
            choices={choices}
            value={choices.labelColumn}
            onChange={(labelColumn) => onLayout({ labelColumn })}
          />
        </div>
      ) : null}
    </div>
  );
}

function Choice({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <label className="block">
      <span className="mb-1 block text-sm font-semibold">{label}</span>
      {children}
    </label>
  );
}

function Typed({
  label,
  value,
  onChange,
}: {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
}) {
  return (
    <Choice label={label}>
      <input
        className="control numbers"
        value={value}
        inputMode="decimal"
        onChange={({ currentTarget }) => onChange(currentTarget.value)}
      />
    </Choice>
  );
}

interface ColumnSelectProps {
  readonly label: string;
  readonly view: Cells;
  readonly choices: MeasurementChoices;
  readonly value: number | null;
  readonly onChange: (column: number | null) => void;
}

function ColumnSelect({ label, view, choices, value, onChange }: ColumnSelectProps) {
  return (
    <Choice label={label}>
      <select
        className="control"
        value={value ?? "none"}
        onChange={({ currentTarget }) => onChange(currentTarget.value === "none" ? null : Number(currentTarget.value))}
      >
        <option value="none">no column</option>
        {Array.from({ length: columnCount(view) }, (_, column) => (
          <option key={column} value={column}>
            {`Column ${column + 1}: ${cellAt(view, choices.headerRow, column) || cellAt(view, choices.headerRow + 1, column)}`}
          </option>
        ))}
      </select>
    </Choice>
  );
}
