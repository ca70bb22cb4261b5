"use client";

interface CrowdBarsProps {
  readonly axisY: number;
  /** From where on the axis and how wide, percent; where it ends above; what it says when it is pointed at. */
  readonly bars: readonly (readonly [left: string, width: string, topY: number, says: string])[];
}

/** What a crowd's bars say, laid over them unseen. */
export function CrowdBars({ axisY, bars }: CrowdBarsProps) {
  return bars.map(([left, width, topY, says]) => (
    <rect key={left} x={`${left}%`} y={topY} width={`${width}%`} height={axisY - topY} opacity="0">
      <title>{says}</title>
    </rect>
  ));
}
