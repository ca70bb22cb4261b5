import { BLOCKING_LABELS } from "@/engine/reporting";
import type { BlockedOtherwise } from "@/engine/results";

/** `Their swatch was wet-blocked, the garment steamed: its fabric may differ more from the swatch’s.` */
export function blockedOtherwiseWords({ swatch, garment }: BlockedOtherwise): string {
  return `Their swatch was ${BLOCKING_LABELS[swatch]}, the garment ${BLOCKING_LABELS[garment]}: its fabric may differ more from the swatch’s, so their lengths count less.`;
}

/** How much a garment's fabric differs from its swatch, as fractions; null where unknown. */
export interface Drifts {
  readonly driftAcross: number | null;
  readonly driftAlong: number | null;
}

/** Smaller drifts are not mentioned. */
const MIN_SHOWN_DRIFT = 0.01;

/** `Their fabric came out 3 % wider and 1 % shorter than their swatch.`; null where there is nothing to mention. */
export function driftWords({ driftAcross, driftAlong }: Drifts): string | null {
  const parts = [told(driftAcross, "wider", "narrower"), told(driftAlong, "longer", "shorter")].filter(
    (part) => part !== null,
  );
  return parts.length === 0 ? null : `Their fabric came out ${parts.join(" and ")} than their swatch.`;
}

function told(drift: number | null, more: string, less: string): string | null {
  if (drift === null || Math.abs(drift) < MIN_SHOWN_DRIFT) return null;
  return `${Math.round(Math.abs(drift) * 100)} % ${drift > 0 ? more : less}`;
}
