"use client";

import { OneOfField, TickField } from "./fields";
import type { DraftStepOf } from "./draft-garment";
import { NameField } from "./name-field";
import { NumberChoice } from "./number-choice";
import { PlaceField } from "./place-field";
import type { StepEdit } from "./step-edit";

const EDGE_KINDS = [
  { value: "bind-off", label: "Bind off" },
  { value: "add", label: "Cast on" },
  { value: "hold", label: "Put on hold" },
  { value: "leave", label: "Leave unworked" },
] as const;

/** Stitches that are bound off, cast on, held or left at an edge. */
export function EdgeFields({ at, step, onStep }: StepEdit<DraftStepOf<"add" | "bind-off" | "hold" | "leave">>) {
  return (
    <div className="flex flex-wrap items-start gap-x-4 gap-y-3">
      <div className="w-40">
        <OneOfField
          at={[...at, "do"]}
          label="What"
          value={step.do}
          choices={EDGE_KINDS}
          onChoice={(kind) => onStep({ ...step, do: kind }, null)}
        />
      </div>
      <NumberChoice
        at={[...at, "each"]}
        label="Stitches"
        direction="stitches"
        value={step.each}
        onNumber={(each, field) => onStep({ ...step, each }, field)}
      />
      <PlaceField at={at} value={step.at} onPlace={(place) => onStep({ ...step, at: place }, null)} />
      <NumberChoice
        at={[...at, "times"]}
        label="How often"
        value={step.times ?? 1}
        onNumber={(times, field) => onStep({ ...step, times }, field)}
      />
    </div>
  );
}

/** Short rows. */
export function ShortRowFields({ at, step, onStep }: StepEdit<DraftStepOf<"short-rows">>) {
  return (
    <div className="flex flex-wrap items-start gap-x-4 gap-y-3">
      <NumberChoice
        at={[...at, "turns"]}
        label="Turns"
        value={step.turns}
        onNumber={(turns, field) => onStep({ ...step, turns }, field)}
      />
      <NumberChoice
        at={[...at, "each"]}
        label="Stitches more each turn"
        direction="stitches"
        value={step.each}
        onNumber={(each, field) => onStep({ ...step, each }, field)}
      />
      <PlaceField at={at} value={step.at} onPlace={(place) => onStep({ ...step, at: place }, null)} />
    </div>
  );
}

/** A marker and where it is placed. */
export function MarkFields({ at, step, onStep }: StepEdit<DraftStepOf<"mark">>) {
  const { at: place } = step;
  return (
    <div className="flex flex-wrap items-start gap-x-4 gap-y-3">
      <NameField label="Marker" value={step.marker} onName={(marker) => onStep({ ...step, marker }, null)} />
      <TickField
        label="at the start of the round"
        checked={place === "start-of-round"}
        onTick={(ticked) => onStep({ ...step, at: ticked ? "start-of-round" : { count: "" } }, null)}
      />
      {place === "start-of-round" ? null : (
        <NumberChoice
          at={[...at, "at"]}
          label="After stitches, from the right edge"
          direction="stitches"
          value={place}
          onNumber={(next, field) => onStep({ ...step, at: next }, field)}
        />
      )}
    </div>
  );
}
