"use client";

import { useEditing } from "./editing";
import { ChoiceField } from "./fields";
import { namesOf, type DraftStepOf } from "./draft-garment";
import { AddButton, ItemButtons } from "./item-buttons";
import { moveItem, removeItem, replaceItem } from "./list-items";
import { NameField } from "./name-field";
import { NumberChoice } from "./number-choice";
import type { StepEdit } from "./step-edit";
import { WorkedField } from "./worked-field";

/** The parts that are joined, in needle order, and the stitches that are cast on between them. */
export function JoinFields({ at, step, onStep }: StepEdit<DraftStepOf<"join">>) {
  const { pattern } = useEditing("pattern");
  const { parts, between = [] } = step;
  const known = [...namesOf(pattern.garment)].filter((part) => part !== "");
  const set = (next: typeof parts) => onStep({ ...step, parts: next }, null);
  const places = step.worked === "flat" ? parts.length - 1 : parts.length;
  return (
    <div className="grid gap-3">
      <p className="text-sm text-soft">In the order in which a right-side row meets them.</p>
      <ol className="grid gap-3">
        {parts.map((ref, index) => (
          <li key={index} className="flex flex-wrap items-end gap-x-4 gap-y-2">
            <div className="w-44">
              <ChoiceField
                at={[...at, "parts", index, "part"]}
                label={`Stitches ${index + 1}`}
                value={ref.part}
                choices={known.map((part) => ({ value: part, label: part }))}
                onChoice={(part) => set(replaceItem(parts, index, { ...ref, part }))}
              />
            </div>
            {index < places ? (
              <NumberChoice
                at={[...at, "between", index]}
                label="New stitches after them"
                direction="stitches"
                value={between[index] ?? 0}
                onNumber={(number, field) => {
                  const all = Array.from({ length: Math.max(between.length, index + 1) }, (_, i) => between[i] ?? 0);
                  onStep({ ...step, between: replaceItem(all, index, number) }, field);
                }}
              />
            ) : null}
            <ItemButtons
              name={`stitches ${index + 1}`}
              onUp={index === 0 ? undefined : () => set(moveItem(parts, index, -1))}
              onDown={index === parts.length - 1 ? undefined : () => set(moveItem(parts, index, 1))}
              onRemove={() => set(removeItem(parts, index))}
            />
          </li>
        ))}
      </ol>
      <div className="flex flex-wrap items-end gap-x-4 gap-y-3">
        <AddButton label="More stitches" onAdd={() => set([...parts, { part: "" }])} />
        <NameField label="Name of the joined part" value={step.as} onName={(as) => onStep({ ...step, as }, null)} />
        <WorkedField at={at} value={step.worked} onWorked={(worked) => onStep({ ...step, worked }, null)} />
      </div>
    </div>
  );
}
