"use client";

import { useMemo } from "react";
import { finishedMeasurements } from "@/engine/prediction";
import { defaultTolerances } from "@/engine/tables";
import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import { useEditing } from "./editing";
import { AddButton } from "./item-buttons";
import { MeasurementCard } from "./measurement-card";
import { newMeasurement } from "./measurement-edit";
import { MeasurementSizeChoice } from "./measurement-size-choice";
import { useOpened } from "./list-items";

/** The finished measurements: how to measure, how each is calculated, and its target. */
export function MeasurementsPart() {
  const { pattern, change, unit, readable, size } = useEditing("pattern", "change", "unit", "readable", "size");
  const { measurements } = pattern;
  const [only, ...others] = measurements;
  const { isOpen, open, toggle } = useOpened(only && others.length === 0 ? [only.id] : []);
  const finished = useMemo(() => {
    const rows = readable === null ? [] : finishedMeasurements(readable);
    return new Map(rows.map(({ measurement, sizes }) => [measurement.id, sizes.find((each) => each.size === size)]));
  }, [readable, size]);
  const add = () => {
    const added = newMeasurement(pattern, defaultTolerances(unit).otherTolerance);
    open(added.id);
    change((now) => ({ ...now, measurements: [...now.measurements, added] }), null);
  };
  return (
    <Section
      title="Measurements"
      intro="What people measure on the finished garment. Build each from your counts, lengths, edgings and seams, line by line; you see the calculation for one size beside it. The target is what it should measure."
    >
      {measurements.length === 0 ? (
        <div className="mb-4">
          <EmptyState title="No measurements yet">
            <p>Start with the one around the body: its stitches, and the ease it should have.</p>
          </EmptyState>
        </div>
      ) : (
        <MeasurementSizeChoice label="Numbers of size" />
      )}
      <ol className="mb-4 grid gap-3">
        {measurements.map((measurement, i) => (
          <MeasurementCard
            key={measurement.id}
            measurement={measurement}
            index={i}
            finished={finished.get(measurement.id)}
            isOpen={isOpen(measurement.id)}
            onToggle={() => toggle(measurement.id)}
          />
        ))}
      </ol>
      <AddButton label="A measurement" onAdd={add} />
    </Section>
  );
}
