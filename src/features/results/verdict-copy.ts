import type { Cell } from "@/engine/gaps";
import type { Measurement } from "@/engine/pattern";
import { formatLengthNumber } from "@/ui/format-length";
import type { LengthUnit } from "@/engine/units";
import { sideWords, type SideWords } from "./side-copy";

/** A cell's verdict, by which cells are counted, drawn and filtered. */
export type CellState = "off" | "leaning" | "unsettled" | "holds" | "none";

interface VerdictContext {
  readonly measurement: Pick<Measurement, "girth" | "on">;
  readonly unit: LengthUnit;
  /** The size's label. */
  readonly size: string;
}

/** A cell without a report has no verdict, whatever its neighbours suggest. */
export function cellState({ reports, verdict }: Cell): CellState {
  return reports === 0 || verdict === null ? "none" : verdict;
}

/** True where a verdict stands or falls with a single tester. */
export function isCarried({ restsOn = [] }: Pick<Cell, "restsOn">): boolean {
  return restsOn.length > 0;
}

/** The verdict in few words, for the cell itself. */
export function verdictWords(cell: Cell, { measurement, unit, size }: VerdictContext): string {
  const words = sideWords(measurement);
  switch (cellState(cell)) {
    case "holds":
      return "as planned";
    case "off":
      return isCarried(cell)
        ? `${sized(cell.gapCm ?? 0, { words, unit })}, perhaps`
        : sized(cell.gapCm ?? 0, { words, unit });
    case "leaning":
      return `probably ${side(cell.gapCm ?? 0, words)}`;
    case "unsettled":
      return isFew(cell.testersToSettle)
        ? `not enough data: ${moreTesters(cell.testersToSettle, size)}`
        : "not enough data";
    case "none":
      return "no report yet";
  }
}

/** A number of further testers that a designer may think of finding. */
const MOST_SAID = 9;

function isFew(testers: number | null): boolean {
  return testers !== null && testers <= MOST_SAID;
}

/** The verdict with its interval, in one or two sentences. */
export function verdictSentence(cell: Cell, { measurement, unit, size }: VerdictContext): string {
  const words = sideWords(measurement);
  const { gapCm, lowCm, highCm } = cell;
  const within = lowCm === null || highCm === null ? "" : betweenWords([lowCm, highCm], { words, unit });
  const gap = gapCm ?? 0;
  switch (cellState(cell)) {
    case "holds":
      return `As planned in ${size}: ${within}, within the tolerance.`;
    case "off":
      return isCarried(cell)
        ? `Perhaps ${sized(gap, { words, unit })} in ${size}, if one tester’s measurements are right: ${within}.`
        : `${capital(sized(gap, { words, unit }))} in ${size}: ${within}.`;
    case "leaning":
      return `Probably ${side(gap, words)} in ${size}, by about ${plain(Math.abs(gap), unit)} ${unit}: ${within}. ${settling(cell, size)}`;
    case "unsettled":
      return `Not enough data yet in ${size}: ${within}. ${settling(cell, size)}`;
    case "none":
      return within === ""
        ? `No report yet in ${size}.`
        : `No report yet in ${size}. Neighbouring sizes suggest ${within}.`;
  }
}

interface SizedContext {
  readonly words: SideWords;
  readonly unit: LengthUnit;
}

/** `between 1 and 3 cm too wide`, or across zero `between 1 cm too narrow and 2 cm too wide`. */
export function betweenWords(
  [lowCm, highCm]: readonly [lowCm: number, highCm: number],
  { words, unit }: SizedContext,
): string {
  const [low, high] = [plain(Math.abs(lowCm), unit), plain(Math.abs(highCm), unit)];
  const acrossZero = lowCm < 0 && highCm > 0 && low !== "0" && high !== "0";
  if (acrossZero) return `between ${low} ${unit} ${words.less} and ${high} ${unit} ${words.more}`;
  const [near, far, way] = lowCm + highCm >= 0 ? [low, high, words.more] : [high, low, words.less];
  return near === far ? `about ${far} ${unit} ${way}` : `between ${near} and ${far} ${unit} ${way}`;
}

/** `2 more testers in L`; of null, which is more than the engine tries, `30+ more testers in L`. */
export function moreTesters(count: number | null, size: string): string {
  if (count === null) return `30+ more testers in ${size}`;
  return `${count} more ${count === 1 ? "tester" : "testers"} in ${size}`;
}

/** A length for running text: `2`, `2.1` or `2 1/8`, without a trailing zero. */
export function plain(cm: number, unit: LengthUnit): string {
  return formatLengthNumber(cm, unit).replace(/\.0$/, "");
}

/** `2 cm too wide`. */
export function sized(cm: number, { words, unit }: SizedContext): string {
  return `${plain(Math.abs(cm), unit)} ${unit} ${side(cm, words)}`;
}

function side(cm: number, { less, more }: SideWords): string {
  return cm < 0 ? less : more;
}

function settling({ testersToSettle, chanceWithThree }: Cell, size: string): string {
  const three = chanceWithThree == null ? "" : threeWords(chanceWithThree, size);
  if (testersToSettle === null)
    return `It is so close to the edge of the tolerance that even 30 more testers in ${size} may not settle it. ${three}`.trim();
  const few = testersToSettle > 3 ? ` ${three}` : "";
  return `${capital(moreTesters(testersToSettle, size))} would settle it in 4 cases of 5.${few}`;
}

/** `3 more testers in L would settle it in 4 cases of 10.` */
function threeWords(chance: number, size: string): string {
  const cases = Math.round(chance * 10);
  return cases === 0
    ? `3 more testers in ${size} would hardly settle it.`
    : `3 more testers in ${size} would settle it in ${cases} ${cases === 1 ? "case" : "cases"} of 10.`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
