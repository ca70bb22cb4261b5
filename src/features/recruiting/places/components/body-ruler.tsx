import { useId } from "react";
import { PersonShape } from "./person-shape";
import { RulerCrowd } from "./ruler-crowd";
import { rulerLayout, type RulerLayout, type RulerPerson } from "./ruler-layout";
import type { Ruler } from "./ruler-of-board";

interface BodyRulerProps extends Ruler {
  readonly title: string;
  /** The whole picture in words. */
  readonly description: string;
  readonly unit: string;
  /** A person's status, shown beside their name. */
  readonly says: (person: RulerPerson) => string;
}

/** A ruler of body measurements: sizes with their reach above, people as ticks below, with a line from each to their size. */
export function BodyRuler({ title, description, unit, sizes, people, bars, says }: BodyRulerProps) {
  const id = useId();
  const layout = rulerLayout(sizes, people, bars);
  return (
    <div
      role="region"
      aria-label={title}
      tabIndex={0}
      className="relative overflow-x-auto rounded-sheet border border-line bg-sheet p-4 shadow-sheet"
    >
      <svg
        width="100%"
        height={layout.heightPx}
        role="img"
        aria-labelledby={`${id}-title`}
        aria-describedby={`${id}-description`}
        style={{ minWidth: layout.leastWidthPx }}
        className="numbers block overflow-visible text-[0.8rem]"
      >
        <title id={`${id}-title`}>{title}</title>
        <desc id={`${id}-description`}>{description}</desc>
        <Sizes layout={layout} />
        <Axis layout={layout} unit={unit} />
        {bars === null ? <People layout={layout} says={says} /> : <RulerCrowd {...{ layout, bars, unit }} />}
      </svg>
    </div>
  );
}

function Sizes({ layout: { sizes, x, railY } }: { readonly layout: RulerLayout }) {
  return (
    <>
      <line x1="0" x2="100%" y1={railY} y2={railY} className="stroke-line" />
      {sizes.map(({ id, from, to, reachY }) => (
        <rect
          key={id}
          x={`${x(from)}%`}
          width={`${x(to) - x(from)}%`}
          y={reachY}
          height="5"
          rx="2.5"
          className="fill-band"
        />
      ))}
      {sizes.map((size) => (
        <SizeMark key={size.id} size={size} x={`${x(size.index)}%`} railY={railY} />
      ))}
    </>
  );
}

interface SizeMarkProps {
  readonly size: RulerLayout["sizes"][number];
  readonly x: string;
  readonly railY: number;
}

function SizeMark({ size: { label, labelY, reachY, filled, wanted, isShort }, x, railY }: SizeMarkProps) {
  return (
    <g>
      <line x1={x} x2={x} y1={labelY + 34} y2={railY} strokeWidth="1.5" className="stroke-line-strong" />
      <svg x={x} y={reachY + 2.5} overflow="visible">
        <circle r="3.5" className="fill-line-strong" />
      </svg>
      <svg x={x} y={railY} overflow="visible">
        <path d="M-6 -5L6 -5L0 5Z" className={isShort ? "fill-thread" : "fill-ink"} />
      </svg>
      <text x={x} y={labelY + 14} textAnchor="middle" className="fill-ink text-[0.95rem] font-semibold">
        {label.length > 6 ? `${label.slice(0, 5)}…` : label}
      </text>
      <text x={x} y={labelY + 30} textAnchor="middle" className={isShort ? "fill-thread font-semibold" : "fill-soft"}>
        {isShort ? "▲ " : ""}
        {filled} of {wanted}
      </text>
    </g>
  );
}

function Axis({ layout: { x, ticks, axisY }, unit }: { readonly layout: RulerLayout; readonly unit: string }) {
  return (
    <g>
      <line x1="0" x2="100%" y1={axisY} y2={axisY} strokeWidth="1.5" className="stroke-ink" />
      {ticks.map((tick) => (
        <g key={tick}>
          <line x1={`${x(tick)}%`} x2={`${x(tick)}%`} y1={axisY} y2={axisY + 6} className="stroke-ink" />
          <text x={`${x(tick)}%`} y={axisY + 20} textAnchor="middle" className="fill-soft">
            {tick}
          </text>
        </g>
      ))}
      <text x="100%" y={axisY + 20} textAnchor="end" className="fill-soft">
        {unit}
      </text>
    </g>
  );
}

/** Lines and ticks below all heads, so that none of them crosses a head. */
function People({ layout, says }: { readonly layout: RulerLayout; readonly says: BodyRulerProps["says"] }) {
  const { people, x, axisY } = layout;
  return (
    <>
      {people.map((person) => (
        <SizeLine key={person.key} {...{ layout, person }} />
      ))}
      {people.map(({ key, index, y }) => (
        <line
          key={key}
          x1={`${x(index)}%`}
          x2={`${x(index)}%`}
          y1={y}
          y2={axisY}
          strokeWidth="1.5"
          className="stroke-line-strong"
        />
      ))}
      {people.map((person) => (
        <Person key={person.key} {...{ layout, person }} says={says(person)} />
      ))}
    </>
  );
}

interface SizeLineProps {
  readonly layout: RulerLayout;
  readonly person: RulerLayout["people"][number];
  readonly className?: string;
}

/** A line from a person to their size; nothing while they wait. */
function SizeLine({ layout: { x, sizes, railY, hasInitials }, person, className = "" }: SizeLineProps) {
  const { index, y, mark, size } = person;
  const stands = sizes.find(({ id }) => id === size);
  if (stands === undefined) return null;
  return (
    <line
      x1={`${x(index)}%`}
      x2={`${x(stands.index)}%`}
      y1={y}
      y2={railY + 5}
      strokeWidth={mark === "locked" ? 2 : 1.2}
      strokeDasharray={mark === "invited" ? "4 3" : undefined}
      strokeOpacity={hasInitials ? 0.75 : 0.4}
      className={`${mark === "invited" ? "stroke-thread" : "stroke-ink"} ${className}`}
    />
  );
}

interface PersonProps {
  readonly layout: RulerLayout;
  readonly person: RulerLayout["people"][number];
  readonly says: string;
}

/** One person's mark; pointing at it shows their name and highlights their line. */
function Person({ layout, person, says }: PersonProps) {
  const { x, axisY, hasInitials } = layout;
  const { index, y, mark, name } = person;
  const r = hasInitials ? 10 : 4.5;
  return (
    <g className="group/person">
      <title>{says}</title>
      <SizeLine
        {...{ layout, person }}
        className="pointer-events-none opacity-0 stroke-3 group-hover/person:opacity-100"
      />
      <svg x={`${x(index)}%`} y={y} overflow="visible">
        <circle r={r + 3} className="fill-transparent" />
        <PersonShape mark={mark} r={r} />
        {hasInitials ? (
          <text
            y="4"
            textAnchor="middle"
            className={`text-[0.68rem] font-semibold ${mark === "waiting" ? "fill-ink" : "fill-sheet"}`}
          >
            {initialOf(name)}
          </text>
        ) : null}
      </svg>
      <text
        x={`${x(index)}%`}
        y={axisY + 42}
        textAnchor={x(index) < 25 ? "start" : x(index) > 75 ? "end" : "middle"}
        className="fill-ink font-semibold opacity-0 group-hover/person:opacity-100"
      >
        {says.length > MOST_LETTERS ? `${says.slice(0, MOST_LETTERS - 1)}…` : says}
      </text>
    </g>
  );
}

/** More would not fit below the axis. */
const MOST_LETTERS = 60;
const LETTERS = new Intl.Segmenter("en", { granularity: "grapheme" });

function initialOf(name: string): string {
  return [...LETTERS.segment(name.trim())][0]?.segment.toUpperCase() ?? "?";
}
