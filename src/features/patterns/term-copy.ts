import type { ExplainedFlat, ExplainedTerm } from "@/engine/prediction";
import type { LengthUnit } from "@/engine/units";
import { formatExactLength, allowanceWords } from "@/ui/format-exact-length";
import { gaugeWords } from "@/ui/format-gauge";
import { formatLength } from "@/ui/format-length";
import { factorWords } from "./pattern-copy";

/** One term of a measurement as a sentence with its numbers, up to the equals sign. */
export function termWords(term: ExplainedTerm, unit: LengthUnit): string {
  if (term.kind !== "diagonal") return flatWords(term, unit);
  const side = (flats: readonly ExplainedFlat[]) => flats.map((flat) => flatWords(flat, unit)).join(", and ");
  const across = `${formatLength(term.acrossCm, unit)} across (${side(term.across) || "nothing"})`;
  const along = `${formatLength(term.alongCm, unit)} along (${side(term.along) || "nothing"})`;
  return `${timesWords(term.times)}the diagonal of ${across} and ${along}, which is ${formatLength(term.eachCm, unit)}`;
}

function flatWords(term: ExplainedFlat, unit: LengthUnit): string {
  switch (term.kind) {
    case "count":
      return countWords(term, unit);
    case "length":
      return `${timesWords(term.times)}${term.label}, worked until it measures ${exact(term.eachCm, unit)}`;
    case "allowance":
      return `${timesWords(term.times)}${term.label}, which ${allowanceWords(term.eachCm, unit)}`;
  }
}

function countWords(term: Extract<ExplainedFlat, { kind: "count" }>, unit: LengthUnit): string {
  const { times, value, direction, label, fabric, perCm } = term;
  const settled = factorWords(term.settles, direction);
  const stretched = factorWords(term.stretch, direction);
  const after = `${settled ? `, ${settled} in the garment` : ""}${stretched ? `, ${stretched} when worn` : ""}`;
  const counted = `${timesWords(times)}${value} ${direction} (${label})`;
  return `${counted} of ${fabric} at ${gaugeWords(perCm, direction, unit)}${after}`;
}

/** `2 × `, `less 2 × `, nothing for one. */
function timesWords(times: number): string {
  const size = Math.abs(times);
  const factor = size === 1 ? "" : `${Number(size.toFixed(4))} × `;
  return `${times < 0 ? "less " : ""}${factor}`;
}

function exact(cm: number, unit: LengthUnit): string {
  return `${formatExactLength(cm, unit)} ${unit}`;
}
