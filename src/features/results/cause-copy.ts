import type { Cause, CauseInput } from "@/engine/gaps";
import type { PatternDocument } from "@/engine/pattern";
import { toCm, type LengthUnit } from "@/engine/units";
import { shownStep } from "@/ui/format-length";
import { sideWords } from "./side-copy";
import { plain } from "./verdict-copy";

/** A cause as a sentence in the designer's own names, with its uncertainty; only perhaps, where a single tester carries it. */
export function causeSentence(cause: Cause, pattern: PatternDocument, unit: LengthUnit): string {
  const sentence = foundSentence(cause, pattern, unit);
  return cause.restsOn.length === 0 ? sentence : `Perhaps ${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`;
}

function foundSentence(cause: Cause, pattern: PatternDocument, unit: LengthUnit): string {
  const name = inputName(cause, pattern);
  const more = cause.estimate >= 0;
  const size = sizeLabel(cause, pattern);
  const cm = `${plain(Math.abs(cause.estimate), unit)} ${unit}`;
  const give = `(±\u00a0${plain(Math.max(cause.standardError, toCm(shownStep(unit), unit)), unit)}\u00a0${unit})`;
  const percent = `${percentOf(cause.estimate)} % (±\u00a0${percentOf(cause.standardError)}\u00a0%)`;
  const number = `${tenths(cause.estimate)} (±\u00a0${tenths(cause.standardError)})`;
  const words = sideWords(pattern.measurements.find(({ id }) => id === cause.id) ?? {});
  const side = (isMore: boolean) => (isMore ? words.more : words.less);
  switch (cause.kind) {
    case "allowance":
      return allowanceTakes(cause.id, pattern)
        ? `${name} takes ${cm} ${more ? "less" : "more"} than stated ${give}.`
        : `${name} adds ${cm} ${more ? "more" : "less"} than stated ${give}.`;
    case "settle":
      return `${capital(name)} comes out ${percent} ${wayWord(cause, more)} in garments than in swatches.`;
    case "stretch":
      return `${name} stretches ${percent} ${more ? "more" : "less"} than stated when worn.`;
    case "count":
      return `In size ${size} the instructions give ${number} ${more ? "more" : "fewer"} ${cause.unit} for ${name} than your grading.`;
    case "offset":
      return `${name} comes out ${cm} ${side(more)} in every size ${give}.`;
    case "step":
      return `${name} grows too ${more ? "much" : "little"} per size: ${cm} ${side(more)} in the largest ${give}, and ${cm} ${side(!more)} in the smallest.`;
    case "from":
      return `${name} is ${cm} ${side(more)} from size ${size} up ${give}.`;
  }
}

/** Another explanation of the same differences, in a few words. */
export function rivalWords(rival: CauseInput, pattern: PatternDocument): string {
  const name = inputName(rival, pattern);
  const size = sizeLabel(rival, pattern);
  switch (rival.kind) {
    case "allowance":
      return `the edging or seam ${name}`;
    case "settle":
      return `how ${name} changes ${rival.direction === "rows" ? "in length" : "in width"} from swatch to garment`;
    case "stretch":
      return `how ${name} stretches when worn`;
    case "count":
      return `${name} in size ${size}`;
    case "offset":
      return `${name} in every size`;
    case "step":
      return `how much ${name} grows per size`;
    case "from":
      return `${name} from size ${size} up`;
  }
}

/** How many of the certain differences a cause explains. */
export function explainedWords({ explained, off }: { readonly explained: number; readonly off: number }): string {
  if (off === 0) return "No difference is certain yet.";
  if (explained === 0) return "It explains none of the differences that are certain.";
  if (explained === off) return off === 1 ? "It explains the one difference." : `It explains all ${off} differences.`;
  return explained > off / 2
    ? `It explains most of the differences: ${explained} of ${off}.`
    : `It explains ${explained} of the ${off} differences.`;
}

/** True where the pattern states that the edging or seam takes something away. */
function allowanceTakes(id: string, pattern: PatternDocument): boolean {
  const cm = pattern.allowances.find((allowance) => allowance.id === id)?.cm ?? 0;
  return typeof cm === "number" ? cm < 0 : Object.values(cm).some((value) => value < 0);
}

/** What the designer calls an input, in quotes. */
export function inputName({ kind, id }: CauseInput, pattern: PatternDocument): string {
  const lists = {
    allowance: pattern.allowances,
    settle: pattern.fabrics,
    stretch: pattern.fabrics,
    count: pattern.counts,
    offset: pattern.measurements,
    step: pattern.measurements,
    from: pattern.measurements,
  };
  if (kind === "settle" && id === "all") return "every fabric";
  return `“${lists[kind].find((item) => item.id === id)?.label ?? id}”`;
}

function sizeLabel({ size }: CauseInput, pattern: PatternDocument): string {
  return pattern.sizes.find(({ id }) => id === size)?.label ?? "";
}

function wayWord({ direction }: CauseInput, more: boolean): string {
  if (direction === "rows") return more ? "longer" : "shorter";
  return more ? "wider" : "narrower";
}

function percentOf(factor: number): string {
  return tenths(factor * 100);
}

/** Without a sign: `1.2`, `3`. */
export function tenths(value: number): string {
  return Math.abs(value).toFixed(1).replace(/\.0$/, "");
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
