"use client";

import { formatPath } from "@/engine/pattern";
import { useEditing } from "./editing";
import { ChoiceField, NumberField, OneOfField } from "./fields";
import { edgesOf, type DraftStepOf } from "./draft-garment";
import { AddButton } from "./item-buttons";
import { removeItem, replaceItem } from "./list-items";
import { NumberChoice } from "./number-choice";
import type { StepEdit } from "./step-edit";
import { WorkedField } from "./worked-field";

const STARTS = {
  knitting: [
    { value: "cast-on", label: "Cast on" },
    { value: "provisional", label: "Cast on provisionally" },
    { value: "pick-up", label: "Pick up along an edge" },
  ],
  crochet: [
    { value: "chain", label: "Chain" },
    { value: "foundation", label: "Foundation stitches" },
    { value: "pick-up", label: "Pick up along an edge" },
  ],
} as const;

/** How stitches are begun, how many, and whether in rows or rounds. */
export function StartFields({ at, step, onStep }: StepEdit<DraftStepOf<"start">>) {
  const { pattern } = useEditing("pattern");
  const starts = STARTS[pattern.craft];
  return (
    <div className="grid gap-3">
      <div className="flex flex-wrap items-start gap-x-4 gap-y-3">
        <div className="w-52 max-w-full">
          <OneOfField
            at={[...at, "how"]}
            label="How it starts"
            value={step.how}
            choices={starts}
            onChoice={(how) => onStep({ ...step, how }, null)}
          />
        </div>
        <NumberChoice
          at={[...at, "stitches"]}
          label="Stitches"
          direction="stitches"
          value={step.stitches}
          onNumber={(stitches, field) => onStep({ ...step, stitches }, field)}
        />
        <WorkedField at={at} value={step.worked} onWorked={(worked) => onStep({ ...step, worked }, null)} />
      </div>
      {step.how === "pick-up" ? <PickUpFields at={at} step={step} onStep={onStep} /> : null}
    </div>
  );
}

function PickUpFields({ at, step, onStep }: Omit<StepEdit<DraftStepOf<"start">>, "noun">) {
  const { pattern } = useEditing("pattern");
  const { along = [], rate = [1, 1] } = step;
  const [stitches, rows] = rate;
  const edges = edgesOf(pattern.garment).map((edge) => ({ value: edge, label: edge }));
  return (
    <div className="grid gap-3">
      {along.map((ref, index) => (
        <div key={index} className="flex flex-wrap items-end gap-2">
          <div className="w-52 max-w-full">
            <ChoiceField
              at={[...at, "along", index, "edge"]}
              label={index === 0 ? "Along the edge" : "then along"}
              value={ref.edge}
              choices={edges}
              onChoice={(edge) => onStep({ ...step, along: replaceItem(along, index, { ...ref, edge }) }, null)}
            />
          </div>
          {along.length > 1 ? (
            <button
              type="button"
              className="min-h-11 text-link text-sm"
              onClick={() => onStep({ ...step, along: removeItem(along, index) }, null)}
            >
              Remove
            </button>
          ) : null}
        </div>
      ))}
      <div>
        <AddButton label="Another edge" onAdd={() => onStep({ ...step, along: [...along, { edge: "" }] }, null)} />
      </div>
      <div className="flex flex-wrap items-start gap-2">
        <NumberField
          at={[...at, "rate", 0]}
          label="Stitches"
          className="w-14"
          value={stitches}
          onText={(text) => onStep({ ...step, rate: [text, rows] }, formatPath([...at, "rate", 0]))}
        />
        <NumberField
          at={[...at, "rate", 1]}
          label="for every … rows"
          className="w-14"
          value={rows}
          onText={(text) => onStep({ ...step, rate: [stitches, text] }, formatPath([...at, "rate", 1]))}
        />
      </div>
    </div>
  );
}
