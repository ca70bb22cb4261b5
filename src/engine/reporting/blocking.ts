import type { Swatch, Tester } from "../pattern";

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
  if (garment === undefined) return null;
  const used = swatches.filter((swatch) => swatch.used === true);
  const counted = used.length > 0 ? used : swatches;
  const other = counted.find(({ blocking }) => blocking !== undefined && blocking !== garment)?.blocking;
  if (other === undefined) return null;
  return `The swatch was ${BLOCKING_LABELS[other]}, the garment ${BLOCKING_LABELS[garment]}: their gauge can differ.`;
}
