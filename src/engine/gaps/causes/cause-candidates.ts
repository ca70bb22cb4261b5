import type { PatternDocument } from "../../pattern";
import type { Candidate } from "./candidate";
import { inputSensitivities } from "./input-sensitivities";

/** Expected effect of a cause on its most affected measurement, in tolerances (docs/method.md#causes). */
const EXPECTED_TOLERANCES = 1.5;

/**
 * The candidates about which the reports have any information.
 *
 * @param reported whether cell (size s, measurement p), at `s * measurements + p`, has a report.
 * @returns candidates in the order of `inputSensitivities`; those that affect no reported cell are left out.
 * @see docs/method.md#causes.
 */
export function causeCandidates(pattern: PatternDocument, reported: readonly boolean[]): Candidate[] {
  if (!reported.includes(true)) return [];
  const tolerances = pattern.measurements.map(({ toleranceCm }) => toleranceCm);
  const candidates = inputSensitivities(pattern)
    .map(({ input, unit, sensitivitiesCm }) => {
      const sensitivities = sensitivitiesCm.map((cm, cell) => cm / (tolerances[cell % tolerances.length] ?? 1));
      const largest = sensitivities.reduce((max, value) => Math.max(max, Math.abs(value)), 0);
      return { input, unit, sensitivities, priorSd: EXPECTED_TOLERANCES / largest };
    })
    .filter(({ sensitivities }) => sensitivities.some((value, cell) => value !== 0 && reported[cell]));
  const ofKind = new Map<string, number>();
  for (const { input } of candidates) ofKind.set(input.kind, (ofKind.get(input.kind) ?? 0) + 1);
  return candidates.map((candidate) => ({ ...candidate, candidatesOfKind: ofKind.get(candidate.input.kind) ?? 1 }));
}
