"use client";

import { formatPath } from "@/engine/pattern";
import { useEditing } from "./editing";
import { ChoiceField, OneOfField } from "./fields";
import type { DraftStepOf } from "./draft-garment";
import { AddButton } from "./item-buttons";
import { removeItem, replaceItem } from "./list-items";
import { NumberChoice, RowsChoice } from "./number-choice";
import { PlaceField } from "./place-field";
import type { StepEdit } from "./step-edit";

type DraftShape = NonNullable<DraftStepOf<"work">["shape"]>[number];

const NEW_SHAPE: DraftShape = { at: "both", stitches: 1, times: { count: "" }, as: "decrease", every: 2 };

/** So many rows, even or with shapings at the same time. */
export function WorkFields({ at, step, noun, onStep }: StepEdit<DraftStepOf<"work">>) {
  const shapes = step.shape ?? [];
  const set = (next: readonly DraftShape[], field: string | null) => {
    const { shape: _before, ...even } = step;
    onStep(next.length === 0 ? even : { ...even, shape: next }, field);
  };
  return (
    <div className="grid gap-3">
      <div className="flex flex-wrap items-start gap-x-4 gap-y-3">
        <RowsChoice
          at={[...at, "rows"]}
          label={noun === "round" ? "Rounds" : "Rows"}
          direction="rows"
          withLengths
          value={step.rows}
          onRows={(rows, field) => onStep({ ...step, rows }, field)}
        />
        <MaterialFields at={at} step={step} onStep={onStep} />
      </div>
      {shapes.map((shape, index) => (
        <ShapeFields
          key={index}
          at={[...at, "shape", index]}
          shape={shape}
          noun={noun}
          onShape={(next, field) => set(replaceItem(shapes, index, next), field)}
          onRemove={() => set(removeItem(shapes, index), null)}
        />
      ))}
      <div>
        <AddButton
          label={shapes.length === 0 ? "Shaping" : "Shaping at the same time"}
          onAdd={() => set([...shapes, NEW_SHAPE], null)}
        />
      </div>
    </div>
  );
}

/** Another fabric or yarn than the piece's, where the pattern has several. */
function MaterialFields({ at, step, onStep }: Omit<StepEdit<DraftStepOf<"work">>, "noun">) {
  const { pattern } = useEditing("pattern");
  return (["fabric", "yarn"] as const).map((key) => {
    const items = key === "fabric" ? pattern.fabrics : pattern.yarns;
    if (items.length < 2 && step[key] === undefined) return null;
    const { [key]: chosen, ...rest } = step;
    return (
      <div key={key} className="w-44 max-w-full">
        <ChoiceField
          at={[...at, key]}
          label={key === "fabric" ? "Fabric" : "Yarn"}
          value={chosen ?? ""}
          nothing="the piece’s"
          choices={items.map(({ id, label }) => ({ value: id, label: label || id }))}
          onChoice={(id) => onStep(id === "" ? rest : { ...rest, [key]: id }, null)}
        />
      </div>
    );
  });
}

const CHANGES = [
  { value: "decrease", label: "decrease" },
  { value: "increase", label: "increase" },
  { value: "bind-off", label: "bind off" },
  { value: "add", label: "cast on" },
] as const;

interface ShapeFieldsProps extends Pick<StepEdit, "at" | "noun"> {
  readonly shape: DraftShape;
  readonly onShape: (shape: DraftShape, field: string | null) => void;
  readonly onRemove: () => void;
}

function ShapeFields({ at, shape, noun, onShape, onRemove }: ShapeFieldsProps) {
  const { every, everyOther: _other, ...spread } = shape;
  const rate = every === undefined ? (shape.everyOther ? "other" : "spread") : "every";
  return (
    <fieldset className="flex flex-wrap items-start gap-x-4 gap-y-3 border-l-2 border-line pl-4">
      <legend className="sr-only">Shaping</legend>
      <div className="w-32">
        <OneOfField
          at={[...at, "as"]}
          label="Shaping"
          value={shape.as}
          choices={CHANGES}
          onChoice={(as) => onShape({ ...shape, as }, null)}
        />
      </div>
      <NumberChoice
        at={[...at, "stitches"]}
        label="Stitches at a time"
        direction="stitches"
        value={shape.stitches}
        onNumber={(stitches, field) => onShape({ ...shape, stitches }, field)}
      />
      <PlaceField at={at} value={shape.at} onPlace={(place) => onShape({ ...shape, at: place }, null)} />
      <NumberChoice
        at={[...at, "times"]}
        label="How often"
        value={shape.times}
        onNumber={(times, field) => onShape({ ...shape, times }, field)}
      />
      <div className="w-48">
        <ChoiceField
          at={[...at, "rate"]}
          label="In which rows"
          value={rate}
          choices={[
            { value: "every", label: `every so many ${noun}s` },
            { value: "spread", label: `spread over all ${noun}s` },
            { value: "other", label: `spread, every other ${noun} only` },
          ]}
          onChoice={(choice) =>
            onShape(
              choice === "every"
                ? { ...spread, every: 2 }
                : choice === "other"
                  ? { ...spread, everyOther: true }
                  : spread,
              null,
            )
          }
        />
      </div>
      {every === undefined ? null : (
        <NumberChoice
          at={[...at, "every"]}
          label={`From one to the next, ${noun}s`}
          value={every}
          onNumber={(next, field) => onShape({ ...shape, every: next }, field)}
        />
      )}
      <FirstRow at={at} shape={shape} noun={noun} onShape={onShape} />
      <button type="button" className="min-h-11 self-end text-link text-sm" onClick={onRemove}>
        Remove this shaping
      </button>
    </fieldset>
  );
}

function FirstRow({ at, shape, noun, onShape }: Omit<ShapeFieldsProps, "onRemove">) {
  const { start, ...rest } = shape;
  if (start === undefined)
    return (
      <button
        type="button"
        className="min-h-11 self-end text-link text-sm"
        onClick={() => onShape({ ...rest, start: 1 }, formatPath([...at, "start"]))}
      >
        Say in which {noun} it begins
      </button>
    );
  return (
    <NumberChoice
      at={[...at, "start"]}
      label={`First in ${noun}`}
      value={start}
      onNumber={(next, field) => onShape({ ...rest, start: next }, field)}
    />
  );
}
