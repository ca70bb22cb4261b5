import { toCm, type LengthUnit } from "@/engine/units";

const BAR: Readonly<Record<LengthUnit, number>> = { cm: 10, in: 4 };

/** A length to compare a drawing with. */
export function ScaleBar({ unit, fullWidthCm }: { readonly unit: LengthUnit; readonly fullWidthCm: number }) {
  const length = BAR[unit];
  return (
    <div className="mt-5 flex items-center gap-2 text-sm text-soft">
      <span
        aria-hidden="true"
        className="h-2 shrink-0 border-x border-b border-soft"
        style={{ width: `${(100 * toCm(length, unit)) / fullWidthCm}%` }}
      />
      {length} {unit} at this scale
    </div>
  );
}
