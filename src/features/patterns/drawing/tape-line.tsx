import type { MeasurementLine } from "@/engine/drawing";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import { placeIn, type Extent } from "./drawing-frame";
import { shortLetter } from "./shape-copy";

interface MeasurementMarkProps {
  readonly line: MeasurementLine;
  readonly extent: Extent;
  readonly isLit: boolean;
}

/** The position of the measuring line. */
export function TapeLine({ line: { from, to }, extent, isLit }: MeasurementMarkProps) {
  const [start, end] = [placeIn(extent, from), placeIn(extent, to)];
  const [stroke, fill] = isLit ? ["stroke-thread", "fill-thread"] : ["stroke-soft", "fill-soft"];
  const radius = isLit ? 4 : 2.5;
  return (
    <g>
      <line x1={start.x} y1={start.y} x2={end.x} y2={end.y} strokeWidth={isLit ? 3 : 1} className={stroke} />
      <circle cx={start.x} cy={start.y} r={radius} className={fill} />
      <circle cx={end.x} cy={end.y} r={radius} className={fill} />
    </g>
  );
}

/** The letter in the middle of the measuring line and, where there is room, the finished length. */
export function TapeLetter({
  line: { letter, from, to, cm },
  extent,
  isLit,
  halo,
  unit,
}: MeasurementMarkProps & { readonly halo: string; readonly unit: LengthUnit }) {
  const middle = placeIn(extent, { xCm: (from.xCm + to.xCm) / 2, yCm: (from.yCm + to.yCm) / 2 });
  return (
    <text
      {...middle}
      textAnchor="middle"
      dominantBaseline="central"
      strokeWidth="8"
      strokeLinejoin="round"
      className={`[paint-order:stroke] ${halo} ${isLit ? "fill-thread" : "fill-ink"}`}
    >
      <tspan className="text-[0.9375rem] font-bold">{shortLetter(letter)}</tspan>
      {cm === null ? null : (
        <tspan dx="4" className="max-sm:hidden">
          {formatLength(cm, unit)}
        </tspan>
      )}
    </text>
  );
}
