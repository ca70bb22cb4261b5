"use client";

import { useEditing } from "./editing";
import { ChoiceField, OneOfField } from "./fields";
import type { DraftStepOf } from "./draft-garment";
import { NameField } from "./name-field";
import type { StepEdit } from "./step-edit";

const ENDS = [
  { value: "bind-off", label: "Bind off" },
  { value: "hold", label: "Put on hold" },
  { value: "graft", label: "Graft to other stitches" },
  { value: "three-needle", label: "Three-needle bind-off with others" },
  { value: "fasten-off", label: "Fasten off" },
] as const;

/** How a part ends, and the edge that it leaves. */
export function EndFields({ at, step, onStep }: StepEdit<DraftStepOf<"end">>) {
  const { pattern } = useEditing("pattern");
  const { with: other, ...alone } = step;
  const isTogether = step.how === "graft" || step.how === "three-needle";
  const parts = [...new Set(pattern.garment.steps.map((each) => each.in.part))].filter((part) => part !== step.in.part);
  return (
    <div className="flex flex-wrap items-start gap-x-4 gap-y-3">
      <div className="w-64 max-w-full">
        <OneOfField
          at={[...at, "how"]}
          label="How it ends"
          value={step.how}
          choices={ENDS}
          onChoice={(how) => {
            onStep(
              how === "graft" || how === "three-needle"
                ? { ...alone, how, with: other ?? { part: "" } }
                : { ...alone, how },
              null,
            );
          }}
        />
      </div>
      {isTogether ? (
        <div className="w-48">
          <ChoiceField
            at={[...at, "with", "part"]}
            label="With the stitches"
            value={other?.part ?? ""}
            choices={parts.map((part) => ({ value: part, label: part }))}
            onChoice={(part) => onStep({ ...alone, with: { part } }, null)}
          />
        </div>
      ) : null}
      <NameField label="Name of the edge" value={step.edge} onName={(edge) => onStep({ ...step, edge }, null)} />
    </div>
  );
}
