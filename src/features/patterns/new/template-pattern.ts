import { parsePattern } from "@/engine/pattern";
import { isRepeatCoarse, patternFromTemplate } from "@/engine/templates";
import { parseLength, type LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import { sizesOf, type InitialPattern } from "./initial-pattern";
import type { TemplateFields } from "./template-schema";

interface Range {
  readonly least: number;
  readonly most: number;
}

/** What garments are worn with, cm (common practice, no source). */
const RANGES = {
  ease: { least: -10, most: 60 },
  length: { least: 15, most: 90 },
  edging: { least: 0.5, most: 12 },
} as const satisfies Readonly<Record<string, Range>>;
/** Stitches or rows to 10 cm for which the templates are tested. */
const GAUGE: Range = { least: 7, most: 50 };
const GAUGE_CM = 10;
/** Bodies for which the templates are tested, cm. */
const BUST: Range = { least: 65, most: 180 };

/** The pattern of a form's template; or what is wrong, by the form's field. */
export function templatePattern(fields: TemplateFields, unit: LengthUnit): InitialPattern {
  const faults: Record<string, string[]> = {};
  const lengths = { ease: 0, length: 0, edging: 0 };
  for (const field of ["ease", "length", "edging"] as const) {
    const read = parseLength(fields[field], unit);
    if (read.ok) lengths[field] = read.cm;
    const fault = read.ok ? outside(read.cm, RANGES[field], unit) : read.message;
    if (fault !== null) faults[field] = [fault];
  }
  const gauge = { stitches: fields.stitches, rows: fields.rows, overCm: fields.over };
  for (const field of ["stitches", "rows"] as const) {
    const over10 = (gauge[field] / gauge.overCm) * GAUGE_CM;
    if (over10 < GAUGE.least || over10 > GAUGE.most)
      faults[field] = [`Templates are for ${GAUGE.least} to ${GAUGE.most} ${field} to 10 cm (4 in).`];
  }
  const sizes = sizesOf(fields, unit);
  if (!sizes.ok) return { ok: false, faults: { ...faults, ...sizes.faults } };
  const { taken } = sizes;
  for (const { label, body } of taken.sizes) {
    const fault = outside(body[taken.sizeBy] ?? 0, BUST, unit);
    if (fault !== null) faults["own.sizes"] = [`“${label}”: ${fault} Templates are made for a bust.`];
  }
  if (isRepeatCoarse({ gauge, repeat: fields.repeat }))
    faults["repeat"] = [
      "Half a repeat on front and back is wider than the tolerance of the bust. Choose a smaller repeat; you can change it in the pattern.",
    ];
  if (Object.keys(faults).length > 0) return { ok: false, faults };
  const { template, name, craft, toolMm, sleeve, repeat } = fields;
  const made = patternFromTemplate({
    ...{ template, name, craft, gauge, toolMm, sleeve, repeat, ...taken },
    ...{ easeCm: lengths.ease, lengthCm: lengths.length, edgingCm: lengths.edging },
  });
  const parsed = parsePattern(made);
  if (parsed.ok) return parsed;
  const [fault] = parsed.faults;
  return { ok: false, faults: { "": [`This ${fault?.says ?? "cannot be saved."}`] } };
}

function outside(cm: number, { least, most }: Range, unit: LengthUnit): string | null {
  if (cm >= least && cm <= most) return null;
  return `Enter ${formatLength(least, unit)} to ${formatLength(most, unit)}.`;
}
