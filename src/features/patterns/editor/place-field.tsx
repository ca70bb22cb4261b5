"use client";

import type { PathPart } from "@/engine/pattern";
import { useEditing } from "./editing";
import { ChoiceField } from "./fields";
import type { DraftPlace } from "./draft-garment";
import { placeChoice, placeChoices, placeOfChoice } from "./step-places";

interface PlaceFieldProps {
  readonly at: readonly PathPart[];
  readonly value: DraftPlace;
  readonly onPlace: (place: DraftPlace) => void;
}

/** Where in the row. */
export function PlaceField({ at, value, onPlace }: PlaceFieldProps) {
  const { pattern } = useEditing("pattern");
  const markers = pattern.garment.steps.flatMap((step) => (step.do === "mark" ? [step.marker] : []));
  return (
    <div className="w-40">
      <ChoiceField
        at={[...at, "at"]}
        label="Where"
        value={placeChoice(value)}
        choices={placeChoices([...new Set(markers)])}
        onChoice={(choice) => onPlace(placeOfChoice(choice))}
      />
    </div>
  );
}
