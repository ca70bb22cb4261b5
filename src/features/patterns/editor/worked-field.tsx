"use client";

import type { PathPart } from "@/engine/pattern";
import type { DraftStepOf } from "./draft-garment";
import { OneOfField } from "./fields";

type Worked = DraftStepOf<"start" | "join">["worked"];

const WORKED = [
  { value: "flat", label: "back and forth" },
  { value: "round", label: "in the round" },
  { value: "turned rounds", label: "in turned rounds" },
  { value: "spiral", label: "in a spiral" },
] as const;

interface WorkedFieldProps {
  readonly at: readonly PathPart[];
  readonly value: Worked;
  readonly onWorked: (worked: Worked) => void;
}

/** In rows, or in which kind of rounds. */
export function WorkedField({ at, value, onWorked }: WorkedFieldProps) {
  return (
    <div className="w-40">
      <OneOfField at={[...at, "worked"]} label="Worked" value={value} choices={WORKED} onChoice={onWorked} />
    </div>
  );
}
