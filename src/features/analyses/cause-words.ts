import type { Cause, CauseInput } from "@/engine/gaps";
import type { PatternDocument } from "@/engine/pattern";
import { toCm, type LengthUnit } from "@/engine/units";
import { shownStep } from "@/ui/format-length";
import { plain } from "./verdict-words";

/** A cause of gaps as a sentence in the designer's own names, with its uncertainty. */
export function causeSentence(cause: Cause, pattern: PatternDocument, unit: LengthUnit): string {
  const name = inputName(cause, pattern);
  const more = cause.estimate >= 0;
  const size = sizeLabel(cause, pattern);
  const cm = `${plain(Math.abs(cause.estimate), unit)} ${unit}`;
  const give = `(±\u00a0${plain(Math.max(cause.standardError, toCm(shownStep(unit), unit)), unit)}\u00a0${unit})`;
  const percent = `${percentOf(cause.estimate)} % (±\u00a0${percentOf(cause.standardError)}\u00a0%)`;
  const number = `${tenths(cause.estimate)} (±\u00a0${tenths(cause.standardError)}) ${cause.unit}`;
  switch (cause.kind) {
    case "allowance":
      return allowanceTakes(cause.id, pattern)
        ? `${name} takes ${cm} ${more ? "less" : "more"} than stated ${give}.`
        : `${name} adds ${cm} ${more ? "more" : "less"} than stated ${give}.`;
    case "settle":
      return `${capital(name)} comes out ${percent} ${wayWord(cause, more)} in the garment than in its swatches.`;
    case "stretch":
      return `${name} stretches ${percent} ${more ? "more" : "less"} than stated when worn.`;
    case "count":
      return `In size ${size} the instructions make ${number} ${more ? "more" : "fewer"} of ${name} than the grading says.`;
    case "offset":
      return `${name} comes out ${cm} too ${more ? "big" : "small"} in every size ${give}.`;
    case "step":
      return `${name} has too ${more ? "much" : "little"} added per size: ${cm} too ${more ? "big" : "small"} in the largest ${give}, as much the other way in the smallest.`;
    case "from":
      return `${name} is ${cm} too ${more ? "big" : "small"} from size ${size} upward ${give}.`;
  }
}

/** What else would explain the same, in few words. */
export function rivalWords(rival: CauseInput, pattern: PatternDocument): string {
  const name = inputName(rival, pattern);
  const size = sizeLabel(rival, pattern);
  switch (rival.kind) {
    case "allowance":
      return `the allowance ${name}`;
    case "settle":
      return `how ${name} settles ${rival.direction === "rows" ? "lengthwise" : "across"}`;
    case "stretch":
      return `how ${name} stretches when worn`;
    case "count":
      return `${name} in size ${size}`;
    case "offset":
      return `${name} in every size`;
    case "step":
      return `what is added per size to ${name}`;
    case "from":
      return `${name} from size ${size} upward`;
  }
}

/** How much of what is wrong a cause accounts for; `explains` is its share of it. */
export function shareWords(explains: number): string {
  if (explains >= 0.6) return "Most of what is wrong comes from it.";
  if (explains >= 0.25) return "A good part of what is wrong comes from it.";
  if (explains >= 0.05) return "A small part of what is wrong comes from it.";
  return "Little of what is wrong comes from it.";
}

/** True where the pattern states the allowance as something that is taken away. */
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

function tenths(value: number): string {
  return Math.abs(value).toFixed(1).replace(/\.0$/, "");
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
