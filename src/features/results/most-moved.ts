import type { PatternDocument } from "@/engine/pattern";
import type { NamedCause } from "@/engine/results";

/** The id of the measurement that a cause moves most, in tolerances; undefined where it moves none. */
export function mostMoved(
  { movesCm }: Pick<NamedCause, "movesCm">,
  { measurements }: PatternDocument,
): string | undefined {
  const moved = movesCm.map((cm, place) => {
    const measurement = measurements[place % measurements.length];
    return { id: measurement?.id, tolerances: Math.abs(cm) / (measurement?.toleranceCm ?? Number.POSITIVE_INFINITY) };
  });
  const [most] = moved.toSorted((left, right) => right.tolerances - left.tolerances);
  return most === undefined || most.tolerances === 0 ? undefined : most.id;
}
