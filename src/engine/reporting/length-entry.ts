import { PLAUSIBLE } from "../pattern";
import { readLength } from "../tables/read-cell";
import { parseLength, type LengthUnit } from "../units";
import { entryAt, type Entry, type Form, type ReadText } from "./form";

/**
 * A length that a tester typed, in cm. A unit that was written overrides the tester's own; if it differs, a remark says what was
 * read. The stored text includes its unit.
 */
export function lengthAt(form: Form, field: string, read: ReadLengthText = readLength): Entry<number> {
  const { unit, formatLength } = form.context;
  const entry = entryAt(form, field, (text) => read(text, unit));
  if (entry.status !== "read") return entry;
  const { value, text } = entry;
  if (unitRead(text, unit) !== unit) form.remarks.push({ field, message: `Read as ${formatLength(value)}.` });
  const said = withUnit(text, unit);
  return { ...entry, kept: said === `${value} cm` ? null : said };
}

type ReadLengthText = (text: string, unit: LengthUnit) => ReadText<number>;

/** The same where it may be 0, as a length worked to a ruler may. */
export function readLengthOrNone(text: string, unit: LengthUnit): ReadText<number> {
  const parsed = parseLength(text, unit);
  return parsed.ok && parsed.cm === 0 ? { ok: true, value: 0 } : readLength(text, unit, PLAUSIBLE.workedCm);
}

/** A text with its unit, so that it means the same to whoever works in another. */
function withUnit(text: string, unit: LengthUnit): string {
  return unitRead(text, "cm") === unitRead(text, "in") ? text : `${text} ${unit}`;
}

/** The inverse of `withUnit`: without the unit that is the tester's own anyway. */
export function withoutUnit(text: string, unit: LengthUnit): string {
  const bare = text.slice(0, -unit.length).trimEnd();
  return text === withUnit(bare, unit) ? bare : text;
}

function unitRead(text: string, unit: LengthUnit): LengthUnit | null {
  const parsed = parseLength(text, unit);
  return parsed.ok ? parsed.unit : null;
}
