import { randomUUID } from "node:crypto";
import { Day } from "@/ui/day";
import { OneButtonForm } from "@/ui/one-button-form";
import { askToMeasure } from "./asked-actions";
import type { AskToMeasure } from "./asked-schema";

interface AskToMeasureButtonProps {
  readonly callId: string;
  readonly testerId: string;
  /** The tester's name. */
  readonly name: string;
  readonly measurement: { readonly id: string; readonly label: string };
  readonly what: AskToMeasure;
  /** When they were asked about it, if they have not answered; null where nothing waits. */
  readonly askedAt: Date | null;
}

/** Asks a tester in one tap: the question arrives at the measurement in their report. */
export function AskToMeasureButton({ callId, testerId, name, measurement, what, askedAt }: AskToMeasureButtonProps) {
  if (askedAt !== null)
    return (
      <p className="text-sm text-soft wrap-anywhere">
        <bdi>{name}</bdi> was asked about {measurement.label} on <Day at={askedAt} /> and has not answered yet.
      </p>
    );
  return (
    <OneButtonForm
      action={askToMeasure}
      sends={{ callId, testerId, what, measurement: measurement.id, formKey: randomUUID() }}
      button={what === "measure" ? `Ask ${name} for it` : `Ask ${name} to measure again`}
      waiting="Asking …"
      about={measurement.label}
    />
  );
}
