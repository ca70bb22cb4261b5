"use client";

import { useEditing } from "./editing";
import { NumberField, TextField, TickField } from "./fields";
import type { MeasurementEdit } from "./measurement-edit";

/** Its name, how to measure it, and its tolerance. */
export function MeasurementBasics({ measurement, i, onMeasurement }: MeasurementEdit) {
  const { unit } = useEditing("unit");
  const { letter, label, how, toleranceCm, girth: isGirth = false } = measurement;
  const path = ["measurements", i] as const;
  return (
    <div className="grid gap-3">
      <div className="flex flex-wrap items-start gap-x-4 gap-y-3">
        <TextField
          at={[...path, "letter"]}
          label="Letter"
          className="w-16 text-center"
          value={letter}
          onText={(text) => onMeasurement({ ...measurement, letter: text }, "letter")}
        />
        <div className="min-w-48 flex-1">
          <TextField
            at={[...path, "label"]}
            label="Name"
            value={label}
            onText={(text) => onMeasurement({ ...measurement, label: text }, "label")}
          />
        </div>
        <NumberField
          at={[...path, "toleranceCm"]}
          label="Tolerance ±"
          kind="length"
          behind={unit}
          value={toleranceCm}
          onText={(text) => onMeasurement({ ...measurement, toleranceCm: text }, "toleranceCm")}
        />
      </div>
      <TextField
        at={[...path, "how"]}
        label="How to measure"
        lines={2}
        value={how}
        onText={(text) => onMeasurement({ ...measurement, how: text }, "how")}
      />
      <TickField
        label="goes around the body: people may measure it flat and double it"
        checked={isGirth}
        onTick={(ticked) => {
          const { girth: _before, ...rest } = measurement;
          onMeasurement(ticked ? { ...rest, girth: true } : rest, null);
        }}
      />
    </div>
  );
}
