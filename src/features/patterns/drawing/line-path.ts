import type { Box, Line, Place } from "@/engine/garment-view";

/** A line as the data of a path, y downward; a hundredth of a millimetre is finer than any screen and keeps the page small. */
export function linePath({ from, stretches }: Line, isClosed = false): string {
  const at = ([x, y]: Place) => `${thousandth(x)},${thousandth(-y)}`;
  const on = stretches.map(({ to, by }) => (by === null ? `L${at(to)}` : `C${at(by[0])} ${at(by[1])} ${at(to)}`));
  return `M${at(from)}${on.join("")}${isClosed ? "Z" : ""}`;
}

export function widthCm({ leftCm, rightCm }: Box): number {
  return rightCm - leftCm;
}

export function heightCm({ bottomCm, topCm }: Box): number {
  return topCm - bottomCm;
}

/** The box about several, so that drawings in it are at one scale and nested. */
export function boxAround(boxes: readonly Box[]): Box {
  return {
    leftCm: Math.min(...boxes.map(({ leftCm }) => leftCm)),
    rightCm: Math.max(...boxes.map(({ rightCm }) => rightCm)),
    bottomCm: Math.min(...boxes.map(({ bottomCm }) => bottomCm)),
    topCm: Math.max(...boxes.map(({ topCm }) => topCm)),
  };
}

/** No drawing may be higher than this share of the available width. */
const HIGHEST = 0.75;

/** The length that the available width must represent, cm, so that drawings in each of these boxes fit at one scale. */
export function fullWidthCm(boxes: readonly Box[]): number {
  return Math.max(...boxes.map(widthCm), Math.max(...boxes.map(heightCm)) / HIGHEST);
}

function thousandth(cm: number): number {
  return Math.round(cm * 1000) / 1000;
}
