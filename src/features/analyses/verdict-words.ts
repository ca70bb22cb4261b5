import type { Cell } from "@/engine/gaps";
import { formatLengthNumber } from "@/ui/format-length";
import type { LengthUnit } from "@/engine/units";

/** How a cell stands, by which it is counted, drawn and found. */
export type CellState = "off" | "leaning" | "unsettled" | "holds" | "none";

interface Telling {
  readonly unit: LengthUnit;
  /** The size's label. */
  readonly size: string;
}

/** A cell without a report has no verdict, whatever its neighbours suggest. */
export function cellState({ reports, verdict }: Cell): CellState {
  return reports === 0 || verdict === null ? "none" : verdict;
}

/** The verdict in few words, as it stands in the cell. */
export function verdictWords(cell: Cell, { unit, size }: Telling): string {
  switch (cellState(cell)) {
    case "holds":
      return "on size";
    case "off":
      return sized(cell.gapCm ?? 0, unit);
    case "leaning":
      return `probably ${side(cell.gapCm ?? 0)}`;
    case "unsettled":
      return `can’t tell yet: ${cell.testersToSettle === null ? `10 or more testers in ${size}` : moreTesters(cell.testersToSettle, size)}`;
    case "none":
      return "no report yet";
  }
}

/** The verdict with its interval, in one or two sentences. */
export function verdictSentence(cell: Cell, { unit, size }: Telling): string {
  const { gapCm, lowCm, highCm } = cell;
  const within = lowCm === null || highCm === null ? "" : `somewhere ${betweenWords(lowCm, highCm, unit)}`;
  const gap = gapCm ?? 0;
  switch (cellState(cell)) {
    case "holds":
      return `On size in ${size}: ${within}, which is within the tolerance.`;
    case "off":
      return `${capital(sized(gap, unit))} in ${size}: ${within}.`;
    case "leaning":
      return `Probably ${side(gap)} in ${size}, by about ${plain(Math.abs(gap), unit)} ${unit}: ${within}. ${settling(cell, size)}`;
    case "unsettled":
      return `Can’t tell yet in ${size}: ${within}. ${settling(cell, size)}`;
    case "none":
      return within === ""
        ? `No report yet in ${size}.`
        : `No report yet in ${size}. What its neighbours suggest: ${within}.`;
  }
}

/** `between 1 and 3 cm too big`, or across zero `between 1 cm too small and 2 cm too big`. */
export function betweenWords(lowCm: number, highCm: number, unit: LengthUnit): string {
  const [low, high] = [plain(Math.abs(lowCm), unit), plain(Math.abs(highCm), unit)];
  const acrossZero = lowCm < 0 && highCm > 0 && low !== "0" && high !== "0";
  if (acrossZero) return `between ${low} ${unit} too small and ${high} ${unit} too big`;
  const [near, far, way] = lowCm + highCm >= 0 ? [low, high, "too big"] : [high, low, "too small"];
  return near === far ? `about ${far} ${unit} ${way}` : `between ${near} and ${far} ${unit} ${way}`;
}

/** `2 more testers in L`. */
export function moreTesters(count: number, size: string): string {
  return `${count} more ${count === 1 ? "tester" : "testers"} in ${size}`;
}

/** A length as in running words: `2`, `2.1` or `2 1/8`, without a nought behind the point. */
export function plain(cm: number, unit: LengthUnit): string {
  return formatLengthNumber(cm, unit).replace(/\.0$/, "");
}

/** `2 cm too big`. */
export function sized(cm: number, unit: LengthUnit): string {
  return `${plain(Math.abs(cm), unit)} ${unit} ${side(cm)}`;
}

function side(cm: number): string {
  return cm < 0 ? "too small" : "too big";
}

function settling({ testersToSettle }: Cell, size: string): string {
  if (testersToSettle === null)
    return `It lies so near the edge of its tolerance that even 9 more testers in ${size} would hardly settle it.`;
  return `${capital(moreTesters(testersToSettle, size))} would settle it.`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
