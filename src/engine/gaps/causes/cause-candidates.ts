import type { PatternDocument } from "../../pattern";
import type { Candidate } from "./candidate";
import { causeMoves } from "./cause-moves";

/** A cause is expected to move its most affected measurement by this many tolerances (docs/method.md#causes). */
const USUAL_TOLERANCES = 1.5;

/**
 * The candidates that the reports can say anything of.
 *
 * @param reported whether cell (size s, measurement p), at `s * measurements + p`, has a report.
 * @returns candidates in the order of `causeMoves`; one whose reported cells it does not move is left out.
 * @see docs/method.md#causes.
 */
export function causeCandidates(pattern: PatternDocument, reported: readonly boolean[]): Candidate[] {
  const tolerances = pattern.measurements.map(({ toleranceCm }) => toleranceCm);
  const candidates = causeMoves(pattern)
    .map(({ input, unit, movesCm }) => {
      const moves = movesCm.map((cm, cell) => cm / (tolerances[cell % tolerances.length] ?? 1));
      const most = moves.reduce((largest, move) => Math.max(largest, Math.abs(move)), 0);
      return { input, unit, moves, priorSd: USUAL_TOLERANCES / most };
    })
    .filter(({ moves }) => moves.some((move, cell) => move !== 0 && reported[cell]));
  const ofKind = new Map<string, number>();
  for (const { input } of candidates) ofKind.set(input.kind, (ofKind.get(input.kind) ?? 0) + 1);
  return candidates.map((candidate) => ({ ...candidate, ofItsKind: ofKind.get(candidate.input.kind) ?? 1 }));
}
