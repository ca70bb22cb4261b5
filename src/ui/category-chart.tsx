import { scaleLinear } from "d3-scale";
import { useId } from "react";
import { DotShape, type DotMark } from "./strip-dots";

interface ChartCategory {
  readonly key: string;
  readonly label: string;
  /** Where the line passes, and where the level stands; null where there is neither. */
  readonly line: number | null;
  readonly level: number | null;
  readonly dots: readonly ChartDot[];
  /** What lies between, where there are too many for dots. */
  readonly range: { readonly low: number; readonly high: number } | null;
}

interface ChartDot {
  readonly key: string;
  readonly label: string;
  readonly value: number;
  readonly mark: DotMark;
}

interface CategoryChartProps {
  readonly title: string;
  readonly description: string;
  readonly categories: readonly ChartCategory[];
  readonly unit: string;
  readonly format: (value: number) => string;
}

const HEIGHT = 270;
const TOP = 22;
const BASE = HEIGHT - 26;
const AXIS_WIDTH = 42;
const LEAST_WIDTH_REM = 2.1;
/** Half of a category's share of the width that a level, or its dots, take. */
const LEVEL_HALF = 0.38;
const DOTS_HALF = 0.26;
const RANGE_HALF = 0.08;

/** Values by category: a line, a level a category with its number, and single dots. */
export function CategoryChart({ title, description, categories, unit, format }: CategoryChartProps) {
  const id = useId();
  const held = categories.flatMap(({ line, level, range, dots }) => [
    ...[line, level, range?.low ?? null, range?.high ?? null].filter((value) => value !== null),
    ...dots.filter(({ mark }) => mark !== "cross").map(({ value }) => value),
  ]);
  const scale = scaleLinear()
    .domain([0.92 * Math.min(...held), 1.04 * Math.max(...held)])
    .nice(5)
    .range([BASE, TOP])
    .clamp(true);
  const ticks = scale.ticks(5);
  return (
    <div role="region" aria-label={title} tabIndex={0} className="overflow-x-auto">
      <div className="flex" style={{ minWidth: `${LEAST_WIDTH_REM * categories.length + 2.5}rem` }}>
        <svg width={AXIS_WIDTH} height={HEIGHT} aria-hidden="true" className="numbers shrink-0 text-[0.75rem]">
          {ticks.map((tick) => (
            <text key={tick} x={AXIS_WIDTH - 8} y={scale(tick) + 4} textAnchor="end" className="fill-soft">
              {format(tick)}
            </text>
          ))}
          <text x={AXIS_WIDTH - 8} y={12} textAnchor="end" className="fill-soft">
            {unit}
          </text>
        </svg>
        <svg
          height={HEIGHT}
          role="img"
          aria-labelledby={`${id}-title ${id}-description`}
          className="numbers w-0 flex-1 overflow-visible text-[0.75rem]"
        >
          <title id={`${id}-title`}>{title}</title>
          <desc id={`${id}-description`}>{description}</desc>
          {ticks.map((tick) => (
            <line key={tick} x1="0" x2="100%" y1={scale(tick)} y2={scale(tick)} className="stroke-line" />
          ))}
          <Line categories={categories} scale={scale} />
          {categories.map((category, i) => (
            <Column key={category.key} {...{ category, i, scale, format }} of={categories.length} />
          ))}
        </svg>
      </div>
    </div>
  );
}

type Scale = (value: number) => number;

function Line({ categories, scale }: { readonly categories: readonly ChartCategory[]; readonly scale: Scale }) {
  return categories.slice(1).map(({ key, line }, index) => {
    const before = categories[index]?.line ?? null;
    if (line === null || before === null) return null;
    return (
      <line
        key={key}
        x1={`${middle(index, categories.length)}%`}
        x2={`${middle(index + 1, categories.length)}%`}
        y1={scale(before)}
        y2={scale(line)}
        strokeWidth="1.5"
        className="stroke-ink"
      />
    );
  });
}

interface ColumnProps {
  readonly category: ChartCategory;
  readonly i: number;
  readonly of: number;
  readonly scale: Scale;
  readonly format: (value: number) => string;
}

function Column({ category, i, of, scale, format }: ColumnProps) {
  const { label, line, level, dots, range } = category;
  const x = middle(i, of);
  const width = 100 / of;
  return (
    <g>
      {range === null ? null : (
        <rect
          x={`${x - RANGE_HALF * width}%`}
          width={`${2 * RANGE_HALF * width}%`}
          y={scale(range.high)}
          height={Math.max(2, scale(range.low) - scale(range.high))}
          rx="3"
          className="fill-line-strong/40"
        >
          <title>{`${label}, ${format(range.low)} to ${format(range.high)}`}</title>
        </rect>
      )}
      {line === null ? null : (
        <svg x={`${x}%`} y={scale(line)} overflow="visible">
          <rect x="-2" y="-2" width="4" height="4" className="fill-ink" />
        </svg>
      )}
      {level === null ? null : (
        <>
          <line
            x1={`${x - LEVEL_HALF * width}%`}
            x2={`${x + LEVEL_HALF * width}%`}
            y1={scale(level)}
            y2={scale(level)}
            strokeWidth="3"
            className="stroke-thread"
          />
          <text x={`${x}%`} y={scale(level) - 6} textAnchor="middle" className="fill-thread font-semibold">
            {format(level)}
          </text>
        </>
      )}
      {dots.map((dot, index) => (
        <svg key={dot.key} x={`${x + spread(index, dots.length) * width}%`} y={scale(dot.value)} overflow="visible">
          <title>{`${dot.label}, ${format(dot.value)}`}</title>
          <DotShape mark={dot.mark} />
        </svg>
      ))}
      <text x={`${x}%`} y={HEIGHT - 6} textAnchor="middle" className="fill-ink">
        {label.length > 6 ? `${label.slice(0, 5)}…` : label}
      </text>
    </g>
  );
}

/** The middle of a category, percent of the width. */
function middle(index: number, of: number): number {
  return (100 * (index + 0.5)) / of;
}

/** Where a dot stands beside its category's middle, as a share of the category's width. */
function spread(index: number, count: number): number {
  return count < 2 ? 0 : DOTS_HALF * ((2 * index) / (count - 1) - 1);
}
