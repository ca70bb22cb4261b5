import type { Measurement, Reading } from "../pattern";
import type { SeededRandom } from "../seeded-random";
import { rounded, writeReading, type GarmentLength, type TesterHabits } from "./simulate-tester";

/**
 * The same measurement taken again, or for the first time where it was left out.
 *
 * Of a reading's error, the share that is the garment's stays with it and the tape's is made anew: given the first error e,
 * the garment's part is normal about (1 − share)·e with variance share·(1 − share).
 *
 * @param tapeShare of a reading's variance, from 0 to 1.
 */
export function readAgain(
  { garmentCm, readCm }: GarmentLength,
  given: { measurement: Measurement; habits: TesterHabits; tapeShare: number; isFirst: boolean },
  random: SeededRandom,
): Reading {
  const { measurement, habits, tapeShare, isFirst } = given;
  if (isFirst) return writeReading(measurement, rounded(readCm, habits.roundCm));
  const unitCm = habits.readingSd * measurement.toleranceCm;
  const ofGarmentCm =
    (1 - tapeShare) * (readCm - garmentCm) + unitCm * Math.sqrt(tapeShare * (1 - tapeShare)) * random.normal();
  const ofTapeCm = unitCm * Math.sqrt(tapeShare) * random.normal();
  return writeReading(measurement, rounded(Math.max(0.1, garmentCm + ofGarmentCm + ofTapeCm), habits.roundCm));
}
