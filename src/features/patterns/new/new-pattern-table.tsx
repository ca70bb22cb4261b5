"use client";

import { useState } from "react";
import {
  RANGE_POINTS,
  sizesBetween,
  sizesFromTable,
  type BodyTable,
  type RangePoint,
  type TableChoice,
} from "@/engine/trade-tables";
import type { LengthUnit } from "@/engine/units";
import { Field, Select } from "@/ui/field";
import { formatLengthNumber } from "@/ui/format-length";
import { MatrixTable } from "@/ui/matrix-table";

/** A table’s choices, as the form sends them. */
export interface TableFields {
  readonly first: string;
  readonly last: string;
  readonly ofRange: string;
  readonly measurements: readonly string[];
}

/** The same when the form comes back with what was chosen. */
export interface ChosenBefore {
  readonly first?: string;
  readonly last?: string;
  readonly ofRange?: string;
  readonly measurements?: readonly (string | undefined)[];
}

const RANGE_WORDS: Readonly<Record<RangePoint, string>> = {
  middle: "the middle",
  low: "the lower end",
  high: "the upper end",
};

interface NewPatternTableProps {
  readonly table: BodyTable;
  readonly unit: LengthUnit;
  readonly before: ChosenBefore | undefined;
  /** Called on each change; at first the whole table is chosen. */
  readonly onChoice?: (choice: TableChoice) => void;
}

interface Chosen {
  readonly first: string;
  readonly last: string;
  readonly ofRange: RangePoint;
  readonly measurements: readonly string[];
}

/** Which sizes and measurements of a table to use, and their values. */
export function NewPatternTable({ table, unit, before, onChoice }: NewPatternTableProps) {
  const [chosen, setChosen] = useState(() => startOf(table, before));
  const id = `tables.${table.id}`;
  const change = (part: Partial<Chosen>) => {
    const next = { ...chosen, ...part };
    setChosen(next);
    onChoice?.(choiceOf(table, next));
  };
  const hasRanges = table.rows.some(({ printed }) => printed[table.unit]?.some((value) => typeof value !== "number"));
  return (
    <>
      <div className="grid grid-cols-2 gap-x-4 sm:max-w-xl sm:grid-cols-3">
        {(["first", "last"] as const).map((end) => (
          <Field key={end} id={`${id}.${end}`} label={end === "first" ? "From size" : "to size"}>
            <Select
              id={`${id}.${end}`}
              name={`${id}.${end}`}
              defaultValue={chosen[end]}
              onChange={({ currentTarget }) => change({ [end]: currentTarget.value })}
            >
              {table.sizes.map((size) => (
                <option key={size.id} value={size.id}>
                  {size.label}
                </option>
              ))}
            </Select>
          </Field>
        ))}
        {hasRanges ? (
          <Field id={`${id}.ofRange`} label="Where the table has a range, use">
            <Select
              id={`${id}.ofRange`}
              name={`${id}.ofRange`}
              defaultValue={chosen.ofRange}
              onChange={({ currentTarget }) => change({ ofRange: rangePoint(currentTarget.value) })}
            >
              {RANGE_POINTS.map((point) => (
                <option key={point} value={point}>
                  {RANGE_WORDS[point]}
                </option>
              ))}
            </Select>
          </Field>
        ) : null}
      </div>
      <MeasurementChoice table={table} name={`${id}.measurements`} chosen={chosen.measurements} onChange={change} />
      <Taken table={table} chosen={chosen} unit={unit} />
    </>
  );
}

interface MeasurementChoiceProps {
  readonly table: BodyTable;
  readonly name: string;
  readonly chosen: readonly string[];
  readonly onChange: (part: Pick<Chosen, "measurements">) => void;
}

function MeasurementChoice({ table, name, chosen, onChange }: MeasurementChoiceProps) {
  const others = table.rows.filter(({ measurement }) => measurement.id !== table.sizeBy);
  if (others.length === 0) return null;
  const sizeBy = table.rows.find(({ measurement }) => measurement.id === table.sizeBy)?.measurement.label;
  return (
    <fieldset className="mb-5">
      <legend className="mb-1 font-semibold">Body measurements</legend>
      <p className="mb-1.5 text-sm text-soft">{sizeBy} is always included, because it orders the sizes.</p>
      <div className="flex flex-wrap gap-x-6">
        {others.map(({ measurement: { id, label } }) => (
          <label key={id} className="flex min-h-11 cursor-pointer items-center gap-2.5">
            <input
              type="checkbox"
              name={name}
              value={id}
              defaultChecked={chosen.includes(id)}
              className="size-5 accent-thread"
              onChange={({ currentTarget }) =>
                onChange({
                  measurements: currentTarget.checked ? [...chosen, id] : chosen.filter((other) => other !== id),
                })
              }
            />
            {label}
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/** The values as the pattern would have them. */
function Taken({ table, chosen, unit }: { table: BodyTable; chosen: Chosen; unit: LengthUnit }) {
  const taken = sizesFromTable(table, choiceOf(table, chosen));
  return (
    <>
      <h3 className="mb-1">Values for your pattern: check them against your own</h3>
      <p className="mb-3 text-sm text-soft">In {unit === "cm" ? "centimetres" : "inches"}.</p>
      <MatrixTable
        label={`Bodies of ${table.label}`}
        corner="Body measurement"
        columns={taken.sizes.map(({ id, label }) => ({ key: id, label }))}
        rows={taken.bodyMeasurements.map(({ id, label, how }) => ({
          key: id,
          head: (
            <>
              {label}
              <span className="block text-sm text-soft max-sm:hidden">{how}</span>
            </>
          ),
          cells: taken.sizes.map(({ body }) => formatLengthNumber(body[id] ?? 0, unit)),
        }))}
      />
      <div className="mt-3 max-w-3xl space-y-1 text-sm text-soft">
        <p>Source: {table.source}.</p>
        <p>{table.unitWhy}</p>
        {table.remarks.map((remark) => (
          <p key={remark}>{remark}</p>
        ))}
      </div>
    </>
  );
}

function choiceOf(table: BodyTable, { first, last, measurements, ofRange }: Chosen): TableChoice {
  return { sizes: sizesBetween(table, first, last), measurements, ofRange };
}

function startOf(table: BodyTable, before: ChosenBefore | undefined): Chosen {
  const all = table.rows.map(({ measurement }) => measurement.id).filter((id) => id !== table.sizeBy);
  const isBack = before?.first !== undefined;
  return {
    first: before?.first ?? table.sizes[0]?.id ?? "",
    last: before?.last ?? table.sizes.at(-1)?.id ?? "",
    ofRange: rangePoint(before?.ofRange),
    measurements: isBack ? all.filter((id) => [before.measurements].flat().includes(id)) : all,
  };
}

function rangePoint(value: string | undefined): RangePoint {
  return RANGE_POINTS.find((point) => point === value) ?? "middle";
}
