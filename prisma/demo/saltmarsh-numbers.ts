/* Bodies, and the numbers that a designer would work out from them; all made up for the demonstration. */

export const STITCHES_PER_CM = 2.2;
export const ROWS_PER_CM = 3;
export const NECK_BAND_CM = 2;
export const SHOULDER_SEAM_CM = 0.5;
export const SLEEVE_SEAM_CM = 1;
export const HEM_RIB_CM = 5;
export const CUFF_RIB_CM = 3;

export const SIZES = [
  { id: "xs", label: "XS", bust: 78, upperArm: 25, armhole: 18, length: 52, neck: 23 },
  { id: "s", label: "S", bust: 86, upperArm: 27, armhole: 19, length: 53, neck: 23.5 },
  { id: "m", label: "M", bust: 94, upperArm: 29, armhole: 20, length: 54.5, neck: 24 },
  { id: "l", label: "L", bust: 102, upperArm: 31.5, armhole: 21, length: 56, neck: 25 },
  { id: "xl", label: "XL", bust: 112, upperArm: 34.5, armhole: 22, length: 57.5, neck: 26 },
  { id: "2x", label: "2X", bust: 122, upperArm: 38, armhole: 23.5, length: 59, neck: 26.5 },
  { id: "3x", label: "3X", bust: 132, upperArm: 41.5, armhole: 25, length: 60.5, neck: 27 },
  { id: "4x", label: "4X", bust: 142, upperArm: 45, armhole: 26.5, length: 61.5, neck: 27.5 },
  { id: "5x", label: "5X", bust: 152, upperArm: 48, armhole: 28, length: 62.5, neck: 28 },
].map((size) => ({ ...size, id: `size-${size.id}` }));

type DemoSize = (typeof SIZES)[number];

export const BUST_EASE_CM = 10;
export const UPPER_ARM_EASE_CM = 7;
export const SLEEVE_CM = 22;
export const NECK_DEPTH_CM = 9;

export function bySize<Value>(value: (size: DemoSize) => Value): Record<string, Value> {
  return Object.fromEntries(SIZES.map((size) => [size.id, value(size)]));
}

function nearestMultiple(value: number, of: number): number {
  return Math.round(value / of) * of;
}

export const body = (size: DemoSize) => nearestMultiple((size.bust + BUST_EASE_CM) * STITCHES_PER_CM, 4);
export const yoke = (size: DemoSize) => body(size) / 2;
export const neck = (size: DemoSize) => {
  const wished = (size.neck + 2 * NECK_BAND_CM) * STITCHES_PER_CM;
  return yoke(size) - 2 * Math.round((yoke(size) - wished) / 2);
};
export const shoulder = (size: DemoSize) => (yoke(size) - neck(size)) / 2;
export const yokeRows = (size: DemoSize) => nearestMultiple((size.armhole + SHOULDER_SEAM_CM) * ROWS_PER_CM, 2);
export const bodyRows = (size: DemoSize) =>
  Math.round((size.length + SHOULDER_SEAM_CM - HEM_RIB_CM) * ROWS_PER_CM) - yokeRows(size);
export const sleeveTop = (size: DemoSize) =>
  nearestMultiple((size.upperArm + UPPER_ARM_EASE_CM + SLEEVE_SEAM_CM) * STITCHES_PER_CM, 2);
export const sleeveCuff = (size: DemoSize) => nearestMultiple(sleeveTop(size) * 0.85, 2);
/** Stitches taken off at either side of the front neck, so few that every second row leaves rows to spare. */
export const neckSteps = (size: DemoSize) => Math.floor(neck(size) / 5);
/** Stitches that wait at centre front. */
export const neckCentre = (size: DemoSize) => neck(size) - 2 * neckSteps(size);
/** Stitches at each side of them. */
export const frontSide = (size: DemoSize) => shoulder(size) + neckSteps(size);
export const neckRows = Math.round((NECK_DEPTH_CM + NECK_BAND_CM) * ROWS_PER_CM);
/** The front is parted for the neck when this many rows are worked. */
export const frontRows = (size: DemoSize) => yokeRows(size) - neckRows;
export const sleeveSteps = (size: DemoSize) => (sleeveTop(size) - sleeveCuff(size)) / 2;
export const sleeveRows = Math.round((SLEEVE_CM - CUFF_RIB_CM) * ROWS_PER_CM);
