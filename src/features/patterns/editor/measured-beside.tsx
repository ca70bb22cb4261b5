"use client";

import { useDeferredValue, useMemo } from "react";
import { countsOfTerm, type PatternDocument } from "@/engine/pattern";
import { finishedMeasurements } from "@/engine/prediction";
import type { LengthUnit } from "@/engine/units";
import { formatChangeNumber, formatLengthNumber } from "@/ui/format-length";
import { drawnIn, viewsInSize } from "../computed";
import { ViewDrawing } from "../drawing/view-drawing";
import { useEditing, useEditingValue } from "./editing";

/** Beside the table while one types: what the size measures, against its targets, and its drawing. */
export function MeasuredBeside() {
  const { readable: newest, unit, size } = useEditing("readable", "unit", "size");
  const readable = useDeferredValue(newest);
  const count = useEditingValue(({ cell }) => cell?.count);
  const label = readable?.sizes.find(({ id }) => id === size)?.label;
  return useMemo(
    () =>
      readable === null || label === undefined ? null : (
        <aside
          aria-label={`Measurements in ${label}`}
          className="rounded-sheet border border-line bg-sheet p-3 text-sm shadow-sheet xl:sticky xl:top-4 xl:max-h-[calc(100vh-6.5rem)] xl:self-start xl:overflow-y-auto"
        >
          <h3 className="text-base">In {label}</h3>
          <Drawing pattern={readable} size={size} label={label} />
          <MeasuredList pattern={readable} size={size} unit={unit} count={count} />
        </aside>
      ),
    [readable, unit, size, count, label],
  );
}

interface OfSize {
  readonly pattern: PatternDocument;
  readonly size: string;
}

function Drawing({ pattern, size, label }: OfSize & { readonly label: string }) {
  const [view] = drawnIn(viewsInSize(pattern, size));
  if (view === undefined) return null;
  return (
    <div className="my-3">
      <ViewDrawing view={{ ...view, tapes: [] }} title={`The garment in ${label}`} />
    </div>
  );
}

/** @param count whose measurements stand out. */
function MeasuredList({
  pattern,
  size,
  unit,
  count,
}: OfSize & { readonly unit: LengthUnit; readonly count: string | undefined }) {
  return (
    <table className="w-full [&_td]:px-1 [&_th]:pr-1">
      <thead className="sr-only">
        <tr>
          <th scope="col">Measurement</th>
          <th scope="col">Length, {unit}</th>
          <th scope="col">From its target</th>
        </tr>
      </thead>
      <tbody>
        {finishedMeasurements(pattern).map(({ measurement, sizes }) => {
          const { designCm = null, deviationCm = null } = sizes.find((each) => each.size === size) ?? {};
          const isOff = deviationCm !== null && Math.abs(deviationCm) > measurement.toleranceCm;
          const isMoved = measurement.terms.flatMap(countsOfTerm).some((id) => id === count);
          return (
            <tr key={measurement.id} className={`border-t border-line ${isMoved ? "bg-band font-semibold" : ""}`}>
              <th scope="row" className="py-1 text-left font-normal wrap-anywhere">
                {measurement.letter} {measurement.label}
              </th>
              <td className="numbers text-right whitespace-nowrap">
                {designCm === null ? "–" : formatLengthNumber(designCm, unit)}
              </td>
              <td className={`numbers text-right whitespace-nowrap ${isOff ? "text-thread" : "text-soft"}`}>
                {isOff ? <span aria-label="more than the tolerance:">▲ </span> : null}
                {deviationCm === null ? "no target" : formatChangeNumber(deviationCm, unit)}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
