"use client";

interface CrowdBarsProps {
  readonly axisY: number;
  /** Start and width on the axis in percent, top end, and the title shown on hover. */
  readonly bars: readonly (readonly [left: string, width: string, topY: number, says: string])[];
}

/** Hover titles of a crowd's bars, in an invisible layer above them. */
export function CrowdBars({ axisY, bars }: CrowdBarsProps) {
  return bars.map(([left, width, topY, says]) => (
    <rect key={left} x={`${left}%`} y={topY} width={`${width}%`} height={axisY - topY} opacity="0">
      <title>{says}</title>
    </rect>
  ));
}
