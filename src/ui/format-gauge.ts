import { FOUR_INCHES_CM, GAUGE_WIDTH_CM, type LengthUnit } from "@/engine/units";

export interface GaugeWidth {
  readonly cm: number;
  readonly words: string;
}

/** The width that a gauge is given over: 10 cm, or 4 in. */
export function gaugeWidth(unit: LengthUnit): GaugeWidth {
  return unit === "in" ? { cm: FOUR_INCHES_CM, words: "4 in" } : { cm: GAUGE_WIDTH_CM, words: "10 cm" };
}

/** `17`, `17.5`, `17.27`: a gauge to hundredths, without idle zeros. */
export function gaugeNumber(value: number): string {
  return String(Number(value.toFixed(2)));
}

/** `17 stitches to 10 cm`, `17.3 stitches to 4 in`. @param counted what is counted: stitches, rows or rounds. */
export function gaugeWords(perCm: number, counted: string, unit: LengthUnit): string {
  const { cm, words } = gaugeWidth(unit);
  return `${gaugeNumber(perCm * cm)} ${counted} to ${words}`;
}
