import { fromCm, roundToSum, toCm, type LengthUnit } from "@/engine/units";

/** Steps lengths are shown in: tenths of a centimetre, eighths of an inch. */
const SHOWN_STEP: Readonly<Record<LengthUnit, number>> = { cm: 0.1, in: 1 / 8 };

/** The step, in the unit, that shown lengths are rounded to. */
export function shownStep(unit: LengthUnit): number {
  return SHOWN_STEP[unit];
}

/** `38.5 cm` or `15 1/8 in`: to a tenth of a centimetre, or an eighth of an inch. */
export function formatLength(cm: number, unit: LengthUnit): string {
  return `${formatLengthNumber(cm, unit)} ${unit}`;
}

/** The same without its unit, for tables whose head names it. */
export function formatLengthNumber(cm: number, unit: LengthUnit): string {
  return formatSteps(fromCm(cm, unit), unit);
}

/** `+0.4 cm`, `−1 1/8 in`, `0 cm`: a change, its sign always shown. */
export function formatChange(cm: number, unit: LengthUnit): string {
  return `${formatChangeNumber(cm, unit)} ${unit}`;
}

/** The same without its unit. */
export function formatChangeNumber(cm: number, unit: LengthUnit): string {
  const text = formatLengthNumber(Math.abs(cm), unit);
  if (isZero(text)) return text;
  return `${cm > 0 ? "+" : "−"}${text}`;
}

function isZero(text: string): boolean {
  return text === "0" || text === "0.0";
}

function formatSteps(value: number, unit: LengthUnit): string {
  const sign = value < 0 ? "−" : "";
  if (unit === "cm") {
    const text = Math.abs(value).toFixed(1);
    return text === "0.0" ? text : `${sign}${text}`;
  }
  const eighths = Math.round(Math.abs(value) * 8);
  return eighths === 0 ? "0" : `${sign}${formatEighths(eighths)}`;
}

function formatEighths(eighths: number): string {
  const whole = Math.floor(eighths / 8);
  const left = eighths % 8;
  if (left === 0) return String(whole);
  const divisor = left % 4 === 0 ? 4 : left % 2 === 0 ? 2 : 1;
  const fraction = `${left / divisor}/${8 / divisor}`;
  return whole === 0 ? fraction : `${whole} ${fraction}`;
}

/** Lengths rounded to what is shown of them, so that the shown ones add up; cm, in their order. */
export function roundedToAddUp(lengthsCm: readonly number[], unit: LengthUnit): number[] {
  const lengths = lengthsCm.map((cm) => fromCm(cm, unit));
  return roundToSum(lengths, shownStep(unit)).map((length) => toCm(length, unit));
}

/** A length for a spreadsheet: a number in the reader's unit, to 0.1 cm or 1/8 in; blank where there is none. */
export function lengthCell(cm: number | null, unit: LengthUnit): number | "" {
  if (cm === null) return "";
  const step = shownStep(unit);
  const steps = Math.round(Math.abs(fromCm(cm, unit)) / step);
  // A tenth is not exact in binary, and `−0` would be shown with its sign.
  return steps === 0 ? 0 : Math.sign(cm) * Number((steps * step).toFixed(3));
}
