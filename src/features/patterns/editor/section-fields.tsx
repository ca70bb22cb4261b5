"use client";

import { NumberField, OneOfField } from "./fields";
import type { DraftStepOf } from "./draft-garment";
import { NumberChoice } from "./number-choice";
import type { StepEdit } from "./step-edit";

const SECTION_EDGES = [
  { value: "both", label: "each side" },
  { value: "left", label: "left edge" },
  { value: "right", label: "right edge" },
] as const;

/** A step of a pattern that was made before steps were: it says how many stitches it begins and ends with. */
export function SectionFields({ at, step, noun, onStep }: StepEdit<DraftStepOf<"section">>) {
  const { shaping, ...straight } = step;
  const isEven = JSON.stringify(step.from) === JSON.stringify(step.to);
  return (
    <div className="grid gap-3">
      <p className="max-w-prose text-sm text-soft">
        From an earlier version of this pattern: it says with how many stitches it begins and ends, and not in which{" "}
        {noun}s they change. Replace it with “Work even”, “Work and shape” and “Bind off at an edge” to make it whole.
      </p>
      <div className="flex flex-wrap items-start gap-x-4 gap-y-3">
        {(["from", "to", "rows"] as const).map((key) => (
          <NumberChoice
            key={key}
            at={[...at, key]}
            label={{ from: "From stitches", to: "To stitches", rows: `Over ${noun}s` }[key]}
            direction={key === "rows" ? "rows" : "stitches"}
            value={step[key]}
            onNumber={(number, field) => onStep({ ...step, [key]: number }, field)}
          />
        ))}
      </div>
      {shaping === undefined ? null : (
        <div className="flex flex-wrap items-start gap-x-4 gap-y-3">
          <NumberField
            at={[...at, "shaping", "stitches"]}
            label="Stitches at a time"
            className="w-17"
            value={shaping.stitches}
            onText={(stitches) => onStep({ ...step, shaping: { ...shaping, stitches } }, "shaping.stitches")}
          />
          <div className="w-40">
            <OneOfField
              at={[...at, "shaping", "edges"]}
              label="Shaped edges"
              value={shaping.edges}
              choices={SECTION_EDGES}
              onChoice={(edges) => onStep({ ...step, shaping: { ...shaping, edges } }, null)}
            />
          </div>
        </div>
      )}
      {isEven ? (
        <button
          type="button"
          className="min-h-11 justify-self-start text-link"
          onClick={() => {
            const { from: _from, to: _to, do: _do, ...rest } = straight;
            onStep({ ...rest, do: "work" }, null);
          }}
        >
          Replace it with “Work even”
        </button>
      ) : null}
    </div>
  );
}
