import { scaleLinear } from "d3-scale";
import { useId, type ReactNode } from "react";
import { stripAnchor } from "./dot-lanes";

/** What values on a strip are held against, and where their middle lies. */
export interface StripFrame {
  readonly title: string;
  readonly description: string;
  readonly reference: { readonly value: number; readonly label: string };
  readonly middle: {
    readonly value: number;
    readonly low: number;
    readonly high: number;
    readonly label: string;
  } | null;
  readonly format: (value: number) => string;
}

/** A value's place, percent of the width. */
type StripScale = (value: number) => number;

interface ValueStripProps extends StripFrame {
  readonly scale: StripScale & { readonly ticks: (count: number) => number[] };
  /** Height of what is drawn between the labels and the axis. */
  readonly height: number;
  /** What is drawn, above the base line. */
  readonly children: (base: number) => ReactNode;
}

const MARGIN = 4;
/** Height of the labels above what is drawn. */
export const LABELS = 56;
const AXIS = 24;
/** How far the scale reaches at least about the reference, and beyond the outermost values, as shares. */
const LEAST_REACH = 0.03;
const ROOM = 0.06;

/** A scale that holds some values, the reference and the middle, with room beside them. */
export function stripScale(values: readonly number[], { reference, middle }: Pick<StripFrame, "reference" | "middle">) {
  const around = [1 - LEAST_REACH, 1 + LEAST_REACH].map((factor) => factor * reference.value);
  const ends = [...values, ...around, ...(middle ? [middle.low, middle.high] : [])];
  const room = ROOM * (Math.max(...ends) - Math.min(...ends));
  return scaleLinear()
    .domain([Math.min(...ends) - room, Math.max(...ends) + room])
    .range([MARGIN, 100 - MARGIN])
    .clamp(true);
}

/** A line of values against a reference and about their middle: the frame in which they are drawn. */
export function ValueStrip({
  title,
  description,
  reference,
  middle,
  format,
  scale,
  height,
  children,
}: ValueStripProps) {
  const id = useId();
  const base = LABELS + height;
  const index = scale(reference.value);
  return (
    <svg
      width="100%"
      height={base + AXIS}
      role="group"
      aria-labelledby={`${id}-title`}
      aria-describedby={`${id}-description`}
      className="numbers block overflow-visible text-[0.78rem]"
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-description`}>{description}</desc>
      {middle ? <Middle {...{ middle, scale, base }} isAbove={middle.value >= reference.value} /> : null}
      <Axis ticks={scale.ticks(6)} {...{ scale, base, format }} />
      <Upright x={index} from={16} to={base} label={reference.label} y={11} tone="thread" anchor={stripAnchor(index)} />
      {children(base)}
    </svg>
  );
}

interface MiddleProps {
  readonly middle: NonNullable<StripFrame["middle"]>;
  readonly scale: StripScale;
  readonly base: number;
  readonly isAbove: boolean;
}

/** The middle and the band about it; its label stands on the side away from the reference. */
function Middle({ middle, scale, base, isAbove }: MiddleProps) {
  const [low, high, index] = [scale(middle.low), scale(middle.high), scale(middle.value)];
  const away = isAbove ? (index > 70 ? "end" : "start") : index < 30 ? "start" : "end";
  return (
    <>
      <rect x={`${low}%`} width={`${high - low}%`} y={34} height={base - 34} className="fill-band" />
      <Upright x={index} from={34} to={base} label={middle.label} y={29} tone="ink" anchor={away} />
    </>
  );
}

interface UprightProps {
  readonly x: number;
  readonly from: number;
  readonly to: number;
  readonly label: string;
  readonly y: number;
  readonly tone: "thread" | "ink";
  readonly anchor: ReturnType<typeof stripAnchor>;
}

function Upright({ x, from, to, label, y, tone, anchor: side }: UprightProps) {
  const [stroke, fill] = tone === "thread" ? ["stroke-thread", "fill-thread"] : ["stroke-ink", "fill-ink"];
  return (
    <g aria-hidden="true">
      <line
        x1={`${x}%`}
        x2={`${x}%`}
        y1={from}
        y2={to}
        strokeWidth={tone === "thread" ? 2.5 : 1.5}
        strokeDasharray={tone === "ink" ? "4 3" : undefined}
        className={stroke}
      />
      <text
        x={`${x}%`}
        y={y}
        textAnchor={side}
        className={`${fill} stroke-sheet stroke-4 font-semibold [paint-order:stroke]`}
      >
        {label}
      </text>
    </g>
  );
}

interface AxisProps {
  readonly ticks: readonly number[];
  readonly scale: StripScale;
  readonly base: number;
  readonly format: (value: number) => string;
}

function Axis({ ticks, scale, base, format }: AxisProps) {
  return (
    <g aria-hidden="true">
      <line x1={`${MARGIN}%`} x2={`${100 - MARGIN}%`} y1={base} y2={base} className="stroke-line-strong" />
      {ticks.map((tick) => (
        <g key={tick}>
          <line x1={`${scale(tick)}%`} x2={`${scale(tick)}%`} y1={base} y2={base + 4} className="stroke-line-strong" />
          <text x={`${scale(tick)}%`} y={base + 17} textAnchor="middle" className="fill-soft">
            {format(tick)}
          </text>
        </g>
      ))}
    </g>
  );
}
