import { movedCells, type Cause, type CauseInput } from "../gaps";
import { solvedCounts } from "../grading";
import { gradingWarnings, type PatternDocument } from "../pattern";
import { adjustInput } from "../revision";
import type { NamedCause } from "./call-results-schema";

/** Causes of `gaps` with what a designer needs to know before they accept one; in the same order. */
export function namedCauses(pattern: PatternDocument, causes: readonly Cause[]): NamedCause[] {
  const inputs = causes.flatMap((cause): CauseInput[] => [cause, ...cause.rivals]);
  const moves = new Map(movedCells(pattern, inputs).map((movesCm, at) => [inputs[at], movesCm ?? []]));
  const solvable = (input: CauseInput) => solvableMeasurements(pattern, moves.get(input) ?? []);
  return causes.map((cause) => ({
    ...cause,
    movesCm: [...(moves.get(cause) ?? [])],
    solvable: solvable(cause),
    breaks: cause.kind === "count" ? brokenByWorked(pattern, cause) : null,
    rivals: cause.rivals.map((rival) => ({ ...rival, solvable: solvable(rival) })),
  }));
}

/** Measurements with a target that the counts can be solved for again, of those that an input moves. */
function solvableMeasurements({ measurements }: PatternDocument, movesCm: readonly number[]): string[] {
  return measurements
    .filter(
      (measurement, at) =>
        solvedCounts(measurement).length > 0 &&
        movesCm.some((move, cell) => cell % measurements.length === at && move !== 0),
    )
    .map(({ id }) => id);
}

/** The first rule that a grading would break with the number that was really worked; null where it breaks none. */
function brokenByWorked(pattern: PatternDocument, cause: Cause): string | null {
  const before = new Set(gradingWarnings(pattern).map(({ path, says }) => `${path} ${says}`));
  const adjusted = adjustInput(pattern, cause, Math.round(cause.estimate), "");
  const [broken] = gradingWarnings(adjusted).filter(({ path, says }) => !before.has(`${path} ${says}`));
  return broken?.says ?? null;
}
