import type { CallDocument } from "../pattern";
import { simulateCall, type GarmentLength, type SimulationChoices } from "../simulation";

/** A call with the garments behind it. */
export interface Garments {
  readonly call: CallDocument;
  readonly lengths: readonly GarmentLength[];
}

/**
 * A simulated call once more testers of a size have come, who work and leave out like the others.
 *
 * @param named what their ids begin with.
 */
export function withMoreTesters(
  { call, lengths }: Garments,
  choices: SimulationChoices,
  { size, testers, seed, named }: { size: string; testers: number; seed: number; named: string },
): Garments {
  const more = simulateCall({ ...choices, testers: { [size]: testers }, seed });
  const idOf = (id: string) => `${named}-${id}`;
  return {
    call: { ...call, testers: [...call.testers, ...more.call.testers.map((one) => ({ ...one, id: idOf(one.id) }))] },
    lengths: [...lengths, ...more.lengths.map((length) => ({ ...length, tester: idOf(length.tester) }))],
  };
}
