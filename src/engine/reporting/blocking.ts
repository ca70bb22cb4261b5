import type { Swatch, Tester } from "../pattern";
// Leaves, not the package's face: a tester's page loads no schema library.
import { chooseSwatch } from "../prediction/gauge";
import { isBlockedOtherwise } from "../prediction/swatch-uncertainty";

/** What was done to a swatch or a garment before it was measured. */
export type Blocking = NonNullable<Tester["blocking"]>;

export const BLOCKING_LABELS: Readonly<Record<Blocking, string>> = {
  wet: "wet-blocked",
  steamed: "steamed",
  "machine-washed": "washed and dried by machine",
  none: "not blocked",
};

/**
 * Says that the garment was blocked otherwise than the swatches that count: their gauge then says less about it.
 *
 * @param garment how the garment was blocked.
 * @returns null where they agree, or where it is not known of a swatch.
 */
export function blockedOtherwise(swatches: readonly Swatch[], garment: Blocking | undefined): string | null {
  const fabrics = new Set(swatches.map(({ fabric }) => fabric));
  const counted = [...fabrics].flatMap((fabric) => chooseSwatch(swatches, fabric) ?? []);
  const other = counted.find((swatch) => isBlockedOtherwise(swatch, garment))?.blocking;
  if (other === undefined || garment === undefined) return null;
  return `The swatch was ${BLOCKING_LABELS[other]}, the garment ${BLOCKING_LABELS[garment]}: their gauge can differ.`;
}
