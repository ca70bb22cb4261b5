"use client";

import { formatPath } from "@/engine/pattern";
import type { FinishedMeasurement } from "@/engine/prediction";
import type { LengthUnit } from "@/engine/units";
import { formatChange, formatLength } from "@/ui/format-length";
import { useEditing } from "./editing";
import { ItemButtons } from "./item-buttons";
import { moveItem, removeItem, replaceItem } from "./list-items";
import { MeasurementBasics } from "./measurement-basics";
import type { DraftMeasurement } from "./measurement-edit";
import { MeasurementPlace } from "./measurement-place";
import { MeasurementTerms } from "./measurement-terms";
import { OpeningCard } from "./opening-card";
import { TargetFields } from "./target-fields";

interface MeasurementCardProps {
  readonly measurement: DraftMeasurement;
  readonly index: number;
  /** Its length in the chosen size, where that can be calculated. */
  readonly finished: FinishedMeasurement | undefined;
  readonly isOpen: boolean;
  readonly onToggle: () => void;
}

/** One measurement: closed, its letter and length; open, all its fields. */
export function MeasurementCard({ measurement, index, finished, isOpen, onToggle }: MeasurementCardProps) {
  const { pattern, change, unit } = useEditing("pattern", "change", "unit");
  const path = formatPath(["measurements", index]);
  const set = (next: DraftMeasurement, field: string | null) =>
    change(
      (now) => ({ ...now, measurements: replaceItem(now.measurements, index, next) }),
      field && `${path}.${field}`,
    );
  const reorder = (by: -1 | 1) =>
    change((now) => ({ ...now, measurements: moveItem(now.measurements, index, by) }), null);
  const { letter, label } = measurement;
  const edit = { measurement, i: index, onMeasurement: set };
  return (
    <OpeningCard
      path={path}
      isOpen={isOpen}
      onToggle={onToggle}
      head={
        <>
          {letter ? <Letter letter={letter} /> : null}
          <span className={label ? "" : "text-soft"}>{label || "Not named yet"}</span>
        </>
      }
      summary={summary(finished, unit)}
      buttons={
        <ItemButtons
          name={label || letter || `measurement ${index + 1}`}
          onUp={index === 0 ? undefined : () => reorder(-1)}
          onDown={index === pattern.measurements.length - 1 ? undefined : () => reorder(1)}
          onRemove={() => change((now) => ({ ...now, measurements: removeItem(now.measurements, index) }), null)}
        />
      }
    >
      {() => (
        <div className="grid gap-7">
          <MeasurementBasics {...edit} />
          <MeasurementTerms {...edit} />
          <TargetFields {...edit} />
          <MeasurementPlace {...edit} />
        </div>
      )}
    </OpeningCard>
  );
}

function Letter({ letter }: { readonly letter: string }) {
  return (
    <span className="inline-flex min-h-8 min-w-8 shrink-0 items-center justify-center rounded-full border border-ink px-1.5 font-serif">
      {letter}
    </span>
  );
}

function summary(finished: FinishedMeasurement | undefined, unit: LengthUnit): string {
  if (!finished || finished.designCm === null) return "";
  const comes = formatLength(finished.designCm, unit);
  return finished.deviationCm === null
    ? `${comes}, no target`
    : `${comes}, ${formatChange(finished.deviationCm, unit)} from its target`;
}
