"use client";

import { useEditing } from "./editing";
import { OneOfField } from "./fields";
import type { MeasurementEdit } from "./measurement-edit";
import { TargetEase } from "./target-ease";
import { newTarget, targetKind, type DraftTarget, type TargetKind } from "./target-kinds";
import { TargetLengths } from "./target-lengths";

const KINDS: readonly { readonly value: TargetKind; readonly label: string }[] = [
  { value: "none", label: "No target" },
  { value: "body", label: "Ease over a body measurement" },
  { value: "lengths", label: "A length for each size" },
];

/** The target of the measurement. */
export function TargetFields({ measurement, i, onMeasurement }: MeasurementEdit) {
  const { pattern } = useEditing("pattern");
  const { target, ...rest } = measurement;
  const head = `target-${measurement.id}`;
  const choose = (kind: TargetKind) => {
    const next = newTarget(pattern, kind);
    onMeasurement(next === undefined ? rest : { ...rest, target: next }, null);
  };
  const edit = {
    index: i,
    measurement: measurement.id,
    onTarget: (next: DraftTarget, field: string | null) =>
      onMeasurement({ ...rest, target: next }, field && `target.${field}`),
  };
  return (
    <section aria-labelledby={head} className="grid gap-3">
      <h4 id={head} className="font-serif text-lg font-semibold">
        Target
      </h4>
      <div className="max-w-md">
        <OneOfField
          at={["measurements", i, "target"]}
          label="Target from"
          value={targetKind(target)}
          choices={KINDS}
          onChoice={choose}
        />
      </div>
      {target === undefined ? null : "cm" in target ? (
        <TargetLengths {...edit} target={target} />
      ) : (
        <TargetEase {...edit} target={target} />
      )}
    </section>
  );
}
