import { scaleLinear } from "d3-scale";
import { dotLanes } from "./dot-lanes";

export interface StandingDot {
  readonly key: string;
  readonly label: string;
  readonly value: number;
  readonly isStrong: boolean;
}

interface DeviationStripProps {
  readonly title: string;
  /** The strip reaches so far to either side of zero. */
  readonly reach: number;
  /** Half-widths of the band and of the limits beyond it. */
  readonly band: number;
  readonly limit: number;
  /** Dots that need no name. */
  readonly usual: readonly number[];
  readonly standing: readonly StandingDot[];
}

const HEIGHT = 30;
const MIDDLE = 19;
/** Names nearer than this on the strip stand above each other, percent of its width. */
const APART = 5;

/** Values about zero in one line: the usual ones as plain dots in a band, the others named. */
export function DeviationStrip({ title, reach, band, limit, usual, standing }: DeviationStripProps) {
  const at = scaleLinear().domain([-reach, reach]).range([2, 98]);
  const lanes = dotLanes(
    standing.map(({ value }) => at(value)),
    APART,
  );
  // A dot is a line of no length with round ends, so that many are one path and stay round however wide the strip is.
  const dots = usual.map((value) => `M${at(value).toFixed(2)} ${MIDDLE}h0`).join("");
  return (
    <svg width="100%" height={HEIGHT} role="img" aria-label={title} className="block overflow-visible">
      <title>{title}</title>
      <rect x={`${at(-band)}%`} width={`${at(band) - at(-band)}%`} y={MIDDLE - 10} height="20" className="fill-band" />
      {[-limit, limit].map((value) => (
        <line
          key={value}
          x1={`${at(value)}%`}
          x2={`${at(value)}%`}
          y1={MIDDLE - 10}
          y2={MIDDLE + 10}
          strokeDasharray="2 2"
          className="stroke-line-strong"
        />
      ))}
      <line x1={`${at(0)}%`} x2={`${at(0)}%`} y1={MIDDLE - 10} y2={MIDDLE + 10} className="stroke-line-strong" />
      <svg width="100%" height={HEIGHT} viewBox={`0 0 100 ${HEIGHT}`} preserveAspectRatio="none">
        <path
          d={dots}
          strokeWidth="6"
          strokeLinecap="round"
          vectorEffect="non-scaling-stroke"
          className="stroke-ink/55"
        />
      </svg>
      {standing.map(({ key, label, value, isStrong }, index) => (
        <svg key={key} x={`${at(value)}%`} y={MIDDLE} overflow="visible">
          <circle
            r={isStrong ? 5 : 4}
            strokeWidth="2"
            className={isStrong ? "fill-thread stroke-thread" : "fill-sheet stroke-ink"}
          />
          <text
            y={-8 - (lanes[index] ?? 0) * 11}
            textAnchor="middle"
            className={`text-[0.75rem] font-semibold ${isStrong ? "fill-thread" : "fill-ink"}`}
          >
            {label}
          </text>
        </svg>
      ))}
    </svg>
  );
}
