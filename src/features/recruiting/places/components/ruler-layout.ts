import { scaleLinear } from "d3-scale";
import { dotLanes } from "@/ui/dot-lanes";
import type { PersonMark } from "../stored-board";

/** A size on the ruler; lengths in the reader's unit. */
export interface RulerSize {
  readonly id: string;
  readonly label: string;
  readonly index: number;
  /** The range of bodies within its reach. */
  readonly from: number;
  readonly to: number;
  readonly filled: number;
  readonly wanted: number;
  readonly isShort: boolean;
}

export interface RulerPerson {
  readonly key: string;
  readonly name: string;
  readonly index: number;
  readonly mark: PersonMark;
  /** Their size; null while they wait. */
  readonly size: string | null;
}

/** How many people have a body measurement within a range, by status and size. */
export interface RulerBar {
  readonly from: number;
  readonly to: number;
  readonly groups: readonly { readonly mark: PersonMark; readonly size: string | null; readonly many: number }[];
}

export interface RulerLayout {
  /** Place on the axis, in percent of the width. */
  readonly x: (value: number) => number;
  readonly ticks: readonly number[];
  readonly leastWidthPx: number;
  /** Few enough that each mark has room for an initial. */
  readonly hasInitials: boolean;
  readonly sizes: readonly (RulerSize & { readonly labelY: number; readonly reachY: number })[];
  readonly people: readonly (RulerPerson & { readonly y: number })[];
  /** The positions of the sizes' marks and of the axis. */
  readonly railY: number;
  readonly axisY: number;
  readonly heightPx: number;
}

const MARGIN = 3;
const LEAST_WIDTH_PX = 620;
const WIDTH_A_SIZE_PX = 66;
const LABEL_PX = 50;
const LABEL_HEIGHT = 36;
const REACH_LANE = 8;
const FAN = 92;
const FAN_OF_MANY = 150;
const MOST_INITIALS = 36;
const TALLEST_PEOPLE = 210;
/** Below the axis: its numbers, and the name shown on hover. */
const BELOW = 52;

/** The layout of a ruler of bodies: sizes on top; people below on the axis, or bars in their place. */
export function rulerLayout(
  sizes: readonly RulerSize[],
  people: readonly RulerPerson[],
  bars: readonly RulerBar[] | null = null,
): RulerLayout {
  const leastWidthPx = Math.max(LEAST_WIDTH_PX, WIDTH_A_SIZE_PX * sizes.length);
  const ends = [
    ...[...sizes, ...(bars ?? [])].flatMap(({ from, to }) => [from, to]),
    ...people.map(({ index }) => index),
  ];
  const scale = scaleLinear()
    .domain([Math.min(...ends), Math.max(...ends)])
    .range([MARGIN, 100 - MARGIN]);
  const percent = (px: number) => (100 * px) / leastWidthPx;
  const labels = dotLanes(
    sizes.map(({ index }) => scale(index)),
    percent(LABEL_PX),
  );
  const reaches = spanLanes(sizes);
  const top = LABEL_HEIGHT * laneCount(labels) + 6;
  const railY = top + REACH_LANE * laneCount(reaches) + 6;
  const hasInitials = people.length <= MOST_INITIALS;
  const lanes = dotLanes(
    people.map(({ index }) => scale(index)),
    percent(hasInitials ? 22 : 10),
  );
  const step = Math.min(hasInitials ? 23 : 11, TALLEST_PEOPLE / laneCount(lanes));
  const radius = hasInitials ? 10 : 5;
  const axisY = railY + (bars === null ? FAN + step * laneCount(lanes) : FAN_OF_MANY + TALLEST_PEOPLE) + radius;
  return {
    x: scale,
    ticks: scale.ticks(10),
    ...{ leastWidthPx, hasInitials, railY, axisY, heightPx: axisY + BELOW },
    sizes: sizes.map((size, index) => ({
      ...size,
      labelY: LABEL_HEIGHT * (laneCount(labels) - 1 - (labels[index] ?? 0)),
      reachY: top + REACH_LANE * (reaches[index] ?? 0),
    })),
    people: people.map((person, index) => ({ ...person, y: axisY - radius - 8 - step * (lanes[index] ?? 0) })),
  };
}

/** Lanes of spans, in their order, so that none of a lane overlap: each takes the first lane that is free. */
function spanLanes(spans: readonly { readonly from: number; readonly to: number }[]): number[] {
  const ends: number[] = [];
  return spans.map(({ from, to }) => {
    const free = ends.findIndex((end) => end < from);
    const lane = free === -1 ? ends.length : free;
    ends[lane] = to;
    return lane;
  });
}

function laneCount(lanes: readonly number[]): number {
  return Math.max(1, ...lanes.map((lane) => lane + 1));
}
