"use client";

import { labelOfRow, type Breakdown, type RowChoice } from "@/engine/tables";
import { fromCm, toCm, type LengthUnit } from "@/engine/units";
import { formatLengthNumber, shownStep } from "@/ui/format-length";
import type { PasteMeasurements } from "./paste-measurements-state";

interface PasteBasisChoiceProps {
  readonly state: PasteMeasurements;
  readonly row: number;
  readonly choice: RowChoice;
  readonly name: string;
}

const SMALL = "min-h-9 rounded border border-line-strong bg-white px-2 py-1 text-sm";

/** What a finished measurement is worked in, from which count, how many times, and what remains. */
export function PasteBasisChoice({ state, row, choice, name }: PasteBasisChoiceProps) {
  const { table, view, choices, setRow } = state;
  const breakdown = table.ok ? table.breakdowns.find((one) => one.row === row) : undefined;
  const counts = choices.rows.flatMap(({ kind }, index) =>
    kind === "stitches" || kind === "rows" ? [{ kind, index }] : [],
  );
  const counted = choice.workedIn !== "ruler";
  const known = counts.some(({ kind, index }) => index === choice.countRow && kind === choice.workedIn);
  return (
    <div>
      <div className="flex items-center gap-1.5">
        {counted ? (
          <>
            <input
              aria-label={`How often ${name} contains the count`}
              className={`${SMALL} numbers w-11 text-center`}
              value={choice.times}
              placeholder={String(breakdown?.times ?? 1)}
              inputMode="numeric"
              onChange={({ currentTarget }) => setRow(row, { times: currentTarget.value })}
            />
            <span aria-hidden="true">×</span>
          </>
        ) : null}
        <select
          aria-label={`What ${name} is worked in`}
          className={`${SMALL} ${counted ? "w-44" : "w-[15.2rem]"}`}
          value={`${choice.workedIn} ${known ? choice.countRow : "none"}`}
          onChange={({ currentTarget }) => setRow(row, basisOf(currentTarget.value))}
        >
          <option value="stitches none">stitches, calculated</option>
          <option value="rows none">rows, calculated</option>
          <option value="ruler none">to a length, not counted</option>
          {counts.map(({ kind, index }) => (
            <option key={index} value={`${kind} ${index}`}>
              {`${labelOfRow(view, choices, index) || kind} (row ${index + 1})`}
            </option>
          ))}
        </select>
      </div>
      {breakdown === undefined ? null : (
        <p className="numbers mt-1 max-w-72 text-xs text-soft">{saysRest(breakdown, choices.unit)}</p>
      )}
    </div>
  );
}

function basisOf(value: string): Pick<RowChoice, "workedIn" | "countRow" | "times"> {
  const [kind, at] = value.split(" ");
  const workedIn = kind === "rows" || kind === "ruler" ? kind : "stitches";
  return { workedIn, countRow: at === undefined || at === "none" ? null : Number(at), times: "" };
}

/** The contribution of edgings, seams and rounding over the sizes, in words. */
function saysRest({ workedIn, countRow, restCm, counts }: Breakdown, unit: LengthUnit): string {
  if (workedIn === "ruler") return "Work until it measures this.";
  const rest = saysSpan([Math.min(...restCm), Math.max(...restCm)], unit);
  if (countRow !== null) return capital(rest);
  return `${Math.min(...counts)} to ${Math.max(...counts)} ${workedIn}; ${rest}`;
}

function saysSpan(ends: readonly [number, number], unit: LengthUnit): string {
  const step = shownStep(unit);
  const [least = 0, most = 0] = ends.map((cm) => Math.round(fromCm(cm, unit) / step));
  if (least === 0 && most === 0) return "no remainder";
  const shown = (steps: number) => formatLengthNumber(toCm(Math.abs(steps) * step, unit), unit);
  const span = (from: number, to: number) =>
    from === to ? shown(from) : from === 0 ? `up to ${shown(to)}` : `${shown(from)} to ${shown(to)}`;
  const says =
    least >= 0
      ? `add ${span(least, most)} ${unit}`
      : most <= 0
        ? `take ${span(most, least)} ${unit}`
        : `take up to ${shown(least)} ${unit} and add up to ${shown(most)} ${unit}`;
  return `edgings, seams and rounding ${says}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
