import type { swatchOutliers, EntryError } from "../gaps";
import { statedGauge, ownValue, type Fabric, type Swatch } from "../pattern";
import { swatchGauge } from "../prediction";
import { fieldOf, type SwatchPart } from "./fields";
import { toTenth } from "./gauge-text";
import type { ReadingQuestion, ReadReport, ReportContext } from "./report-context";

interface SwatchContext {
  readonly suspects: ReturnType<typeof swatchOutliers>;
  readonly context: ReportContext;
}

/** Questions about swatches far from the stated gauge, and about exactly 10 cm from testers who work in inches. */
export function swatchQuestions(read: ReadReport, { suspects, context }: SwatchContext): ReadingQuestion[] {
  return read.report.swatches.flatMap((swatch, index) => {
    const key = read.keys.swatches[index];
    if (key === undefined || ownValue(read.typed, `swatches[${index}].kept`) !== undefined) return [];
    const ask = (part: SwatchPart, slip: ReadingQuestion["slip"], message: string): ReadingQuestion[] => [
      { field: fieldOf.swatch(key, part), keptField: fieldOf.swatch(key, "kept"), slip, message },
    ];
    const fabric = context.pattern.fabrics.find(({ id }) => id === swatch.fabric);
    const suspect = suspects.find((found) => found.index === index)?.suspect;
    if (suspect && fabric) {
      const part = suspect.slip === null ? furthestPart(swatch, fabric) : PART_OF_ERROR[suspect.slip];
      return ask(part ?? "stitches", suspect.slip, swatchMessage(suspect.slip, statedText(swatch, fabric)));
    }
    const part = partOfExactlyTenCm(swatch);
    return context.unit === "in" && part
      ? ask(
          part,
          "four-inches",
          "Did you count over 4 in or over 10 cm? 4 in are 10.16 cm; type “4 in” where it was that.",
        )
      : [];
  });
}

/** The part of a swatch in which each entry error is fixed. */
const PART_OF_ERROR: Partial<Record<EntryError, SwatchPart>> = {
  "stitches-for-rows": "stitches",
  "inches-as-cm": "across",
  "cm-as-inches": "across",
  decimal: "across",
  "ridges-as-rows": "rows",
  "per-inch": "across",
};

function partOfExactlyTenCm({ acrossCm, alongCm }: Swatch): SwatchPart | undefined {
  if (acrossCm === 10) return "across";
  return alongCm === 10 ? "along" : undefined;
}

function furthestPart(swatch: Swatch, fabric: Fabric): SwatchPart {
  const own = swatchGauge(swatch);
  const stated = statedGauge(fabric);
  const off = (perCm: number, statedPerCm: number) => Math.abs(Math.log(perCm / statedPerCm));
  return off(own.stitchesPerCm, stated.stitchesPerCm) >= off(own.rowsPerCm, stated.rowsPerCm) ? "stitches" : "rows";
}

/** The stated gauge over the swatch's own width and height. */
function statedText({ acrossCm, alongCm }: Swatch, fabric: Fabric): string {
  const { stitchesPerCm, rowsPerCm } = statedGauge(fabric);
  return `${toTenth(stitchesPerCm * acrossCm)} stitches and ${toTenth(rowsPerCm * alongCm)} rows`;
}

function swatchMessage(slip: EntryError | null, stated: string): string {
  const expected = `over this width and height the pattern has ${stated}`;
  switch (slip) {
    case "stitches-for-rows":
      return `Are stitches and rows swapped? Counted ${expected}.`;
    case "inches-as-cm":
      return `Is this width in inches? Counted ${expected}.`;
    case "cm-as-inches":
      return `Is this width in centimetres? Counted ${expected}.`;
    case "decimal":
      return `Is the decimal point of this width in the right place? Counted ${expected}.`;
    case "per-inch":
      return `Did you count over 1 inch? Then type “1 in” for the width and the height; ${expected}.`;
    case "ridges-as-rows":
      return `Did you count ridges? A ridge is two rows; ${expected}.`;
    default:
      return `This is far from the pattern’s gauge: ${expected}. Please count once more, or confirm that it is correct.`;
  }
}
