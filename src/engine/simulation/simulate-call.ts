import { CALL_FORMAT, type CallDocument, type PatternDocument, type Places, type Tester } from "../pattern";
import { seededRandom } from "../seeded-random";
import {
  simulateTester,
  type GarmentLength,
  type Person,
  type PlantedEntryError,
  type PlantedMistake,
  type TesterHabits,
} from "./simulate-tester";

export interface SimulationChoices {
  /** The published pattern, which testers follow. */
  readonly pattern: PatternDocument;
  /** The same pattern with the numbers that the garments really have. */
  readonly real: PatternDocument;
  /** The pattern's own error beside that, cm; none when left out. */
  readonly cellErrorCm?: (size: string, measurement: string) => number;
  /** How many testers of each size report. */
  readonly testers: Readonly<Record<string, number>>;
  readonly places: Places;
  readonly habits: TesterHabits;
  /** Who the testers are, in the order in which they are made; people like all others where left out. */
  readonly people?: readonly Person[];
  readonly seed: number;
}

export interface SimulatedCall {
  readonly call: CallDocument;
  /** Entry errors that were planted on purpose. */
  readonly entryErrors: readonly PlantedEntryError[];
  /** Readings that are wrong like no known entry error. */
  readonly mistakes: readonly PlantedMistake[];
  /** Of all testers and measurements. */
  readonly lengths: readonly GarmentLength[];
}

/**
 * A call whose testers, gauges, drifts and readings are drawn at random about a known truth.
 *
 * @param choices the published pattern, the real one, and the testers' habits; counts of testers by size id.
 * @returns a call document with testers of the smallest size first, and what was planted in their readings.
 * @see docs/method.md#simulation.
 */
export function simulateCall(choices: SimulationChoices): SimulatedCall {
  const random = seededRandom(choices.seed);
  const testers: Tester[] = [];
  const entryErrors: PlantedEntryError[] = [];
  const mistakes: PlantedMistake[] = [];
  const lengths: GarmentLength[] = [];
  for (const { id: size } of choices.pattern.sizes) {
    for (let made = 0; made < (choices.testers[size] ?? 0); made += 1) {
      const person = choices.people?.[testers.length];
      const simulated = simulateTester({ ...choices, size, id: `tester-${testers.length + 1}`, person }, random);
      testers.push(simulated.tester);
      entryErrors.push(...simulated.entryErrors);
      mistakes.push(...simulated.mistakes);
      lengths.push(...simulated.lengths);
    }
  }
  return {
    call: { format: CALL_FORMAT, pattern: choices.pattern, places: choices.places, testers },
    entryErrors,
    mistakes,
    lengths,
  };
}
