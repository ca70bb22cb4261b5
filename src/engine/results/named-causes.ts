import { cellSensitivities, type Cause, type CauseInput } from "../gaps";
import { solvedCounts } from "../grading";
import { gradingWarnings, type PatternDocument } from "../pattern";
import { adjustInput } from "../revision";
import type { NamedCause } from "./call-results-schema";

/** Causes of `gaps` with what a designer needs to know before accepting one, in the same order. */
export function namedCauses(pattern: PatternDocument, causes: readonly Cause[]): NamedCause[] {
  const inputs = causes.flatMap((cause): CauseInput[] => [cause, ...cause.rivals]);
  const sensitivities = new Map(
    cellSensitivities(pattern, inputs).map((perUnitCm, index) => [inputs[index], perUnitCm ?? []]),
  );
  const solvable = (input: CauseInput) => solvableMeasurements(pattern, sensitivities.get(input) ?? []);
  return causes.map((cause) => ({
    ...cause,
    movesCm: [...(sensitivities.get(cause) ?? [])],
    solvable: solvable(cause),
    breaks: cause.kind === "count" ? brokenByWorked(pattern, cause) : null,
    rivals: cause.rivals.map((rival) => ({ ...rival, solvable: solvable(rival) })),
  }));
}

/** Measurements affected by an input whose counts can be solved again for a target. */
function solvableMeasurements({ measurements }: PatternDocument, sensitivitiesCm: readonly number[]): string[] {
  return measurements
    .filter(
      (measurement, index) =>
        solvedCounts(measurement).length > 0 &&
        sensitivitiesCm.some((value, cell) => cell % measurements.length === index && value !== 0),
    )
    .map(({ id }) => id);
}

/** The first rule that the grading would break with the number that was really worked; null if none. */
function brokenByWorked(pattern: PatternDocument, cause: Cause): string | null {
  const before = new Set(gradingWarnings(pattern).map(({ path, says }) => `${path} ${says}`));
  const adjusted = adjustInput(pattern, cause, Math.round(cause.estimate), "");
  const [broken] = gradingWarnings(adjusted).filter(({ path, says }) => !before.has(`${path} ${says}`));
  return broken?.says ?? null;
}
