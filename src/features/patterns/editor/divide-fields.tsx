"use client";

import { uniqueSlug } from "@/engine/tables";
import { useEditing } from "./editing";
import { namesOf, withPartNamed, type DraftStepOf } from "./draft-garment";
import { AddButton, ItemButtons } from "./item-buttons";
import { moveItem, removeItem, replaceItem } from "./list-items";
import { NameField } from "./name-field";
import { NumberChoice } from "./number-choice";
import type { StepEdit } from "./step-edit";

/** The parts that stitches are divided into, from the right edge to the left. */
export function DivideFields({ at, step, onStep }: StepEdit<DraftStepOf<"divide">>) {
  const { pattern, change } = useEditing("pattern", "change");
  const { into } = step;
  const set = (next: typeof into, field: string | null) => onStep({ ...step, into: next }, field);
  const rename = (was: string, name: string) =>
    change((now) => {
      const free = namesOf(now.garment).has(name) ? uniqueSlug(name, namesOf(now.garment)) : name;
      return { ...now, garment: withPartNamed(now.garment, was, free) };
    }, null);
  return (
    <div className="grid gap-3">
      <p className="text-sm text-soft">From the right edge to the left, as a right-side row meets them.</p>
      <ol className="grid gap-3">
        {into.map((share, index) => (
          <li key={index} className="flex flex-wrap items-start gap-x-4 gap-y-2">
            <NameField label="Part" value={share.part} onName={(name) => rename(share.part, name)} />
            <NumberChoice
              at={[...at, "into", index, "stitches"]}
              label="Stitches"
              direction="stitches"
              value={share.stitches}
              onNumber={(stitches, field) => set(replaceItem(into, index, { ...share, stitches }), field)}
            />
            <span className="self-end">
              <ItemButtons
                name={`part ${share.part}`}
                onUp={index === 0 ? undefined : () => set(moveItem(into, index, -1), null)}
                onDown={index === into.length - 1 ? undefined : () => set(moveItem(into, index, 1), null)}
                onRemove={() => set(removeItem(into, index), null)}
              />
            </span>
          </li>
        ))}
      </ol>
      <div>
        <AddButton
          label="A part"
          onAdd={() =>
            set(
              [
                ...into,
                { part: uniqueSlug(`${step.in.part} part`, namesOf(pattern.garment)), stitches: { count: "" } },
              ],
              null,
            )
          }
        />
      </div>
    </div>
  );
}
