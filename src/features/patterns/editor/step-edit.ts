import type { PathPart } from "@/engine/pattern";
import type { RowNoun } from "@/engine/shaping";
import type { DraftStep } from "./draft-garment";

export interface StepEdit<Step extends DraftStep = DraftStep> {
  /** Path of the step in the draft. */
  readonly at: readonly PathPart[];
  readonly step: Step;
  readonly noun: RowNoun;
  /** @param field where it is typed; null for a separate edit. */
  readonly onStep: (step: DraftStep, field: string | null) => void;
}
