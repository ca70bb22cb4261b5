import type { MeasurementLine } from "@/engine/drawing";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import { placeIn, type Extent } from "./drawing-frame";
import { shortLetter } from "./piece-words";

interface MeasurementMarkProps {
  readonly line: MeasurementLine;
  readonly extent: Extent;
  readonly unit: LengthUnit;
  readonly isLit: boolean;
}

const HALO = "[paint-order:stroke] stroke-band stroke-[5px] [stroke-linejoin:round]";

/** The tape's place: a line with its letter and, where there is room, the finished length. */
export function MeasurementMark({ line: { letter, from, to, cm }, extent, unit, isLit }: MeasurementMarkProps) {
  const [start, end] = [placeIn(extent, from), placeIn(extent, to)];
  const middle = placeIn(extent, { xCm: (from.xCm + to.xCm) / 2, yCm: (from.yCm + to.yCm) / 2 });
  const stroke = isLit ? "stroke-thread" : "stroke-soft";
  return (
    <g>
      <line x1={start.x} y1={start.y} x2={end.x} y2={end.y} strokeWidth={isLit ? 3 : 1} className={stroke} />
      <circle cx={start.x} cy={start.y} r={isLit ? 4 : 2.5} className={isLit ? "fill-thread" : "fill-soft"} />
      <circle cx={end.x} cy={end.y} r={isLit ? 4 : 2.5} className={isLit ? "fill-thread" : "fill-soft"} />
      <text
        {...middle}
        textAnchor="middle"
        dominantBaseline="central"
        className={`${HALO} ${isLit ? "fill-thread" : "fill-ink"}`}
      >
        <tspan className="text-[0.9375rem] font-bold">{shortLetter(letter)}</tspan>
        {cm === null ? null : (
          <tspan dx="5" className="max-sm:hidden">
            {formatLength(cm, unit)}
          </tspan>
        )}
      </text>
    </g>
  );
}
