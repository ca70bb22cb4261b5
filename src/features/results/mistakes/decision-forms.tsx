import type { ReadingDecision } from "@/engine/pattern";
import type { FlaggedItem } from "@/engine/results";
import type { LengthUnit } from "@/engine/units";
import { DecideButtons } from "./decide-buttons";
import { UseValueForm } from "./use-value-form";

interface DecisionFormsProps {
  readonly callId: string;
  readonly item: Pick<FlaggedItem, "tester" | "part" | "position">;
  /** Names the item for people who hear the page. */
  readonly name: string;
  readonly decision: ReadingDecision | null;
  readonly counts: boolean;
  readonly unit: LengthUnit;
  /** Differs after each decision: a form that was sent is empty again. */
  readonly decided: string;
}

/** What a designer may do about a number of a report: include, exclude, and of a reading also use another value. */
export function DecisionForms({ callId, item, name, decision, counts, unit, decided }: DecisionFormsProps) {
  return (
    <>
      <DecideButtons {...{ callId, item, name, decision, counts }} />
      {item.part === "readings" ? <UseValueForm key={decided} {...{ callId, item, name, unit }} /> : null}
    </>
  );
}
