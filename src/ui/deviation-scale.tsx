import { scaleLinear } from "d3-scale";
import { dotLanes } from "./dot-lanes";
import { DEVIATION_SCALE, STRIP_MIDDLE, type Deviations } from "./deviation-strip";

/** Names nearer than this on the strip stand above each other, percent of its width. */
const APART = 5;

/** Half-widths of the band and of the limits beyond it, and how far a strip reaches to either side of zero. */
export interface DeviationScale {
  readonly reach: number;
  readonly band: number;
  readonly limit: number;
}

/** A place on a strip, percent of its width to a tenth. */
function scaleOf(reach: number) {
  const scale = scaleLinear().domain([-reach, reach]).range([2, 98]);
  return (value: number) => Math.round(10 * scale(value)) / 10;
}

/** Puts values about zero on a strip. */
export function placeDeviations(
  usual: readonly number[],
  standing: readonly { readonly label: string; readonly value: number; readonly isStrong: boolean }[],
  { reach }: DeviationScale,
): Deviations {
  const at = scaleOf(reach);
  const places = standing.map(({ value }) => at(value));
  const lanes = dotLanes(places, APART);
  return {
    usual: usual.map(at),
    standing: standing.map(({ label, isStrong }, index) => ({
      ...{ label, isStrong, index: places[index] ?? 0, lane: lanes[index] ?? 0 },
    })),
  };
}

/** What every strip of a page shares: the band, the limits beyond it and zero. */
export function DeviationStripScale({ reach, band, limit }: DeviationScale) {
  const at = scaleOf(reach);
  return (
    <svg width="0" height="0" className="absolute" aria-hidden="true">
      <symbol id={DEVIATION_SCALE} overflow="visible">
        <rect
          x={`${at(-band)}%`}
          width={`${at(band) - at(-band)}%`}
          y={STRIP_MIDDLE - 10}
          height="20"
          className="fill-band"
        />
        {[-limit, 0, limit].map((value) => (
          <line
            key={value}
            x1={`${at(value)}%`}
            x2={`${at(value)}%`}
            y1={STRIP_MIDDLE - 10}
            y2={STRIP_MIDDLE + 10}
            strokeDasharray={value === 0 ? undefined : "2 2"}
            className="stroke-line-strong"
          />
        ))}
      </symbol>
    </svg>
  );
}
