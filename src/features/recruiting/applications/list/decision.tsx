import { DECISION_LABELS } from "../apply/apply-copy";
import { DecisionButtons } from "./decision-buttons";

export interface GivenDecision {
  readonly applicationId: string;
  readonly name: string;
  readonly decision: "yes" | "maybe" | "no" | null;
}

interface DecisionProps {
  readonly given: GivenDecision;
  /** The call for the decision buttons; null for viewers. */
  readonly callId: string | null;
}

/** The designer's decision: buttons for editors, text for viewers. */
export function Decision({ given: { applicationId, name, decision }, callId }: DecisionProps) {
  if (callId !== null) return <DecisionButtons {...{ callId, applicationId, name, decision }} />;
  return <p className="font-semibold">{DECISION_LABELS[decision ?? "undecided"]}</p>;
}
