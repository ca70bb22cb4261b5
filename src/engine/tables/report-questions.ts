import type { Measurement } from "../pattern";
import { CM_PER_INCH } from "../units";

/** A reading outside these shares of the pattern's number is questioned; common practice, no source. */
const READING_SHARES = { min: 0.65, max: 1.5 };
const COUNT_SHARES = { min: 0.6, max: 1.6 };
const GAUGE_SHARES = { min: 0.6, max: 1.6 };
const TOOLS_MM = { min: 1, max: 25 };
const MAX_RATIO_ERROR = 0.12;

/** The unit in which a reading must have been taken to be what the pattern says; undefined where none explains it. */
export function unitOfReading(cm: number, designCm: number | undefined): "cm" | "in" | undefined {
  if (designCm === undefined || designCm <= 0) return undefined;
  const isNear = (factor: number) => Math.abs(cm / designCm / factor - 1) < MAX_RATIO_ERROR;
  if (isNear(1 / CM_PER_INCH)) return "in";
  return isNear(CM_PER_INCH) ? "cm" : undefined;
}

/** @returns a question where a reading is out of reach, undefined where it can be. */
export function readingQuestion({
  cm,
  measurement,
  designCm,
}: {
  readonly cm: number;
  readonly measurement: Measurement;
  readonly designCm: number | undefined;
}): string | undefined {
  if (designCm === undefined || designCm <= 0) return undefined;
  const share = cm / designCm;
  if (share >= READING_SHARES.min && share <= READING_SHARES.max) return undefined;
  const said = `${measurement.label} of ${oneDecimal(cm)} cm, where the pattern says ${oneDecimal(designCm)} cm`;
  const isNear = (factor: number) => Math.abs(share / factor - 1) < MAX_RATIO_ERROR;
  const unit = unitOfReading(cm, designCm);
  if (unit === "in") return `${said}: was it measured in inches?`;
  if (unit === "cm") return `${said}: was it measured in centimetres and not in inches?`;
  if (measurement.girth && isNear(0.5)) return `${said}: was it laid flat and not doubled?`;
  if (isNear(0.1) || isNear(10)) return `${said}: is the decimal point in the right place?`;
  return `${said}: is that right?`;
}

/** @returns a question where a count as worked is far from the pattern's. */
export function workedQuestion(worked: number, graded: number | undefined): string | undefined {
  if (graded === undefined || Math.abs(worked - graded) <= 4) return undefined;
  const share = worked / graded;
  if (share >= COUNT_SHARES.min && share <= COUNT_SHARES.max) return undefined;
  return `${worked}, where the pattern says ${graded}: is that right?`;
}

/** @returns a question where a swatch is far from the pattern's gauge. Both counts over `overCm`. */
export function gaugeQuestion({
  count,
  stated,
  direction,
  overCm,
}: {
  readonly count: number;
  readonly stated: number;
  readonly direction: "stitches" | "rows";
  readonly overCm: number;
}): string | undefined {
  const share = count / stated;
  if (share >= GAUGE_SHARES.min && share <= GAUGE_SHARES.max) return undefined;
  return `${oneDecimal(count)} ${direction} over ${oneDecimal(overCm)} cm, where the pattern says ${oneDecimal(stated)}: is that right?`;
}

/** @returns a question where no hook or needle has that size. */
export function toolQuestion(mm: number): string | undefined {
  return mm >= TOOLS_MM.min && mm <= TOOLS_MM.max
    ? undefined
    : `A hook or needle of ${oneDecimal(mm)} mm: is that right?`;
}

function oneDecimal(value: number): string {
  return String(Math.round(value * 10) / 10);
}
