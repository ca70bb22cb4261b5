/** How far a garment's fabric came out from its swatch, as fractions; null where nothing is known. */
export interface Drifts {
  readonly driftAcross: number | null;
  readonly driftAlong: number | null;
}

/** Less than this is not worth telling. */
const WORTH_TELLING = 0.01;

/** `Their fabric came out 3 % wider and 1 % shorter than their swatch.`; null where there is nothing to tell. */
export function driftWords({ driftAcross, driftAlong }: Drifts): string | null {
  const parts = [told(driftAcross, "wider", "narrower"), told(driftAlong, "longer", "shorter")].filter(
    (part) => part !== null,
  );
  return parts.length === 0 ? null : `Their fabric came out ${parts.join(" and ")} than their swatch.`;
}

function told(drift: number | null, more: string, less: string): string | null {
  if (drift === null || Math.abs(drift) < WORTH_TELLING) return null;
  return `${Math.round(Math.abs(drift) * 100)} % ${drift > 0 ? more : less}`;
}
