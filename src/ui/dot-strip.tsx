import { scaleLinear } from "d3-scale";
import { useId } from "react";
import { dotLanes } from "./dot-lanes";

export type DotMark = "full" | "hollow" | "square" | "cross";

export interface StripDot {
  readonly key: string;
  readonly label: string;
  readonly value: number;
  readonly mark: DotMark;
}

interface DotStripProps {
  readonly title: string;
  readonly description: string;
  readonly dots: readonly StripDot[];
  /** A value to hold the dots against. */
  readonly reference: { readonly value: number; readonly label: string };
  readonly middle: {
    readonly value: number;
    readonly low: number;
    readonly high: number;
    readonly label: string;
  } | null;
  readonly format: (value: number) => string;
}

const MARGIN = 4;
const LABELS = 56;
const AXIS = 24;
/** How far the scale reaches at least about the reference, and beyond the outermost dots, as shares. */
const LEAST_REACH = 0.03;
const ROOM = 0.06;
const LANE = 11;
const TALLEST = 150;
/** Dots nearer than this on the scale stand above each other, percent of the width. */
const APART = 3.2;
/** More dots than this would make the way through them by keyboard too long; the table beside names them. */
const MOST_STOPS = 40;

/** Single values on a line, the alike ones above each other, against a reference and about their middle. */
export function DotStrip({ title, description, dots, reference, middle, format }: DotStripProps) {
  const id = useId();
  const held = dots.filter(({ mark }) => mark !== "cross").map(({ value }) => value);
  const around = [1 - LEAST_REACH, 1 + LEAST_REACH].map((factor) => factor * reference.value);
  const ends = [...held, ...around, ...(middle ? [middle.low, middle.high] : [])];
  const room = ROOM * (Math.max(...ends) - Math.min(...ends));
  const scale = scaleLinear()
    .domain([Math.min(...ends) - room, Math.max(...ends) + room])
    .range([MARGIN, 100 - MARGIN])
    .clamp(true);
  const lanes = dotLanes(
    dots.map(({ value }) => scale(value)),
    APART,
  );
  const most = Math.max(1, ...lanes.map((lane) => lane + 1));
  const step = Math.min(LANE, TALLEST / most);
  const base = LABELS + most * step + 6;
  const name = LABELS - 6;
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
      <Upright
        x={scale(reference.value)}
        from={16}
        to={base}
        label={reference.label}
        y={11}
        tone="thread"
        anchor={anchor(scale(reference.value))}
      />
      {dots.map((dot, at) => (
        <Dot
          key={dot.key}
          x={scale(dot.value)}
          y={base - 7 - (lanes[at] ?? 0) * step}
          {...{ dot, name }}
          says={`${dot.label}, ${format(dot.value)}`}
          isStop={dots.length <= MOST_STOPS}
        />
      ))}
    </svg>
  );
}

type Scale = (value: number) => number;

interface MiddleProps {
  readonly middle: NonNullable<DotStripProps["middle"]>;
  readonly scale: Scale;
  readonly base: number;
  readonly isAbove: boolean;
}

/** The middle and the band about it; its label stands on the side away from the reference. */
function Middle({ middle, scale, base, isAbove }: MiddleProps) {
  const [low, high, at] = [scale(middle.low), scale(middle.high), scale(middle.value)];
  const away = isAbove ? (at > 70 ? "end" : "start") : at < 30 ? "start" : "end";
  return (
    <>
      <rect x={`${low}%`} width={`${high - low}%`} y={34} height={base - 34} className="fill-band" />
      <Upright x={at} from={34} to={base} label={middle.label} y={29} tone="ink" anchor={away} />
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
  readonly anchor: Anchor;
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

function Axis({
  ticks,
  scale,
  base,
  format,
}: {
  ticks: number[];
  scale: Scale;
  base: number;
  format: (value: number) => string;
}) {
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

interface DotProps {
  readonly dot: StripDot;
  readonly x: number;
  readonly y: number;
  readonly name: number;
  readonly says: string;
  readonly isStop: boolean;
}

/** One value; pointed at or stepped to, it tells whose it is. */
function Dot({ dot, x, y, name, says, isStop }: DotProps) {
  return (
    <g tabIndex={isStop ? 0 : undefined} role="img" aria-label={says} className="group/dot outline-none">
      <title>{says}</title>
      <text
        x={`${x}%`}
        y={name}
        textAnchor={anchor(x)}
        className="fill-ink stroke-sheet stroke-4 font-semibold opacity-0 [paint-order:stroke] group-hover/dot:opacity-100 group-focus/dot:opacity-100"
      >
        {says}
      </text>
      <svg x={`${x}%`} y={y} overflow="visible">
        <circle r="8" className="fill-transparent stroke-transparent stroke-2 group-focus/dot:stroke-thread" />
        <DotShape mark={dot.mark} />
      </svg>
    </g>
  );
}

/** A dot about the origin; its shape carries its meaning. */
export function DotShape({ mark }: { readonly mark: DotMark }) {
  switch (mark) {
    case "full":
      return <circle r="4" className="fill-ink" />;
    case "hollow":
      return <circle r="3.6" strokeWidth="1.6" className="fill-sheet stroke-ink" />;
    case "square":
      return <rect x="-3.8" y="-3.8" width="7.6" height="7.6" className="fill-ink" />;
    case "cross":
      return <path d="M-3.5 -3.5L3.5 3.5M-3.5 3.5L3.5 -3.5" strokeWidth="1.6" className="stroke-soft" />;
  }
}

type Anchor = "start" | "middle" | "end";

function anchor(x: number): Anchor {
  if (x < 22) return "start";
  return x > 78 ? "end" : "middle";
}
