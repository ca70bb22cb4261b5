import { suspectAt } from "./doubtful-items";
import type { GapsOutput, Step, Suspect } from "@/engine/gaps";
import type { CallDocument, Decision, Reading, Tester } from "@/engine/pattern";

export interface CellReading {
  readonly tester: string;
  /** Where it stands among her readings. */
  readonly position: number;
  /** A person's word on it. */
  readonly decision: Decision | null;
  /** Her first, second … reading of this measurement; null where she took one. */
  readonly which: number | null;
  readonly step: Step;
  readonly notCounted: NotCounted | null;
  readonly suspect: Suspect | null;
  readonly driftAcross: number | null;
  readonly driftAlong: number | null;
}

/** Why a reading is not compared. */
export type NotCounted = "changed" | "unwashed" | "set-aside" | "slip";

/** All readings of one measurement in one size, counted or not, in the call's order. */
export function cellReadings(
  call: CallDocument,
  output: GapsOutput,
  at: { readonly size: string; readonly measurement: string },
): CellReading[] {
  const findings = new Map(output.testers.map((finding) => [finding.tester, finding]));
  let stepAt = 0;
  return call.testers.flatMap((tester) => {
    const steps = output.steps.slice(stepAt, stepAt + tester.readings.length);
    stepAt += tester.readings.length;
    if (tester.size !== at.size) return [];
    const own = tester.readings.flatMap((reading, index) => {
      const step = steps[index];
      return reading.measurement === at.measurement && step ? [{ reading, step, position: index }] : [];
    });
    const finding = findings.get(tester.id);
    return own.map(({ reading, step, position }, index) => {
      const suspect = suspectAt(output.suspects, tester, { part: "readings", position });
      return {
        tester: tester.id,
        position,
        decision: reading.decision ?? null,
        which: own.length === 1 ? null : index + 1,
        step,
        notCounted: notCounted(tester, reading, suspect),
        suspect,
        driftAcross: finding?.driftAcross ?? null,
        driftAlong: finding?.driftAlong ?? null,
      };
    });
  });
}

/** On purpose made otherwise weighs most; then a person's word, then the engine's, then the washing. */
function notCounted(tester: Tester, reading: Reading, suspect: Suspect | null): NotCounted | null {
  if (tester.changed?.includes(reading.measurement)) return "changed";
  if (reading.decision !== undefined) return reading.decision === "keep" ? null : "set-aside";
  if (suspect?.setAside) return "slip";
  return reading.state === "unwashed" ? "unwashed" : null;
}
