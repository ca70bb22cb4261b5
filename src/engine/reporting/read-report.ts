import type { PatternDocument } from "../pattern";
import { fieldOf, parseField, type TypedReport } from "./fields";
import { newForm, textAt, type Form } from "./form";
import {
  fitAreas,
  readBlocking,
  readFit,
  readPrefers,
  readTypedCounts,
  readTypedHours,
  readTypedLengths,
} from "./read-typed-garment";
import { readChanged, readTypedReadings } from "./read-typed-readings";
import { readTypedSwatches } from "./read-typed-swatches";
import { readTypedYarn } from "./read-typed-yarn";
import type { ReadReport, ReportContext } from "./report-context";

/**
 * Reads a report as it was typed, field by field.
 *
 * Counts and lengths without an entry are the pattern's for the size; `workedTold` is false unless the tester has said that they
 * followed it. An incomplete item is a
 * fault at the missing field and is left out of the report; a completely blank one is ignored. A girth typed as the width it
 * has laid flat is doubled.
 *
 * @param typed any text in any field.
 * @param context the revision that the tester followed, parsed; its size, the tester's unit.
 * @returns a report that is valid as a document (without faults all of what was typed), the texts to store with it, faults
 *   and remarks by field. Nothing typed gives an empty report.
 * @throws {RangeError} where a length of the pattern names no number for the size, which a parsed document rules out.
 * @see docs/method.md#readings-that-count; docs/documents.md#call.
 */
export function readReport(typed: TypedReport, context: ReportContext): ReadReport {
  const form = newForm(typed, context);
  const { swatches, keys: swatchKeys } = readTypedSwatches(form);
  const worked = readTypedCounts(form);
  const workedLengths = readTypedLengths(form);
  const workedTold = areCountsTold(form);
  const changed = readChanged(form);
  const { readings, keys: readingKeys } = readTypedReadings(form);
  const { yarn, keys: yarnKeys } = readTypedYarn(form);
  const fit = readFit(form);
  const prefers = readPrefers(form);
  const blocking = readBlocking(form, swatches);
  const hours = readTypedHours(form);
  remarkOnUnknown(form);
  return {
    report: {
      size: context.size,
      swatches,
      worked,
      ...(workedLengths === undefined ? {} : { workedLengths }),
      workedTold,
      ...(changed.length === 0 ? {} : { changed }),
      ...(blocking === undefined ? {} : { blocking }),
      readings,
      yarn,
      ...(fit.length === 0 ? {} : { fit }),
      ...(prefers === undefined ? {} : { prefers }),
      ...(hours === undefined ? {} : { hours }),
    },
    typed: form.storedTexts,
    keys: { swatches: swatchKeys, readings: readingKeys, yarn: yarnKeys },
    faults: form.faults,
    remarks: form.remarks,
  };
}

/** True where every count and length has an entry, or the tester has said that they followed the pattern in all others. */
function areCountsTold(form: Form): boolean {
  const { counts, lengths = [] } = form.context.pattern;
  const fields = [...counts.map(({ id }) => fieldOf.worked(id)), ...lengths.map(({ id }) => fieldOf.length(id))];
  const faulty = new Set(form.faults.map(({ field }) => field));
  if (fields.every((field) => textAt(form, field) !== "" && !faulty.has(field))) return true;
  return form.storedTexts[fieldOf.asWritten] === "yes";
}

/** Adds a remark to each entry for something that this revision does not have, because it is not sent. */
function remarkOnUnknown(form: Form): void {
  const known = knownIds(form.context.pattern);
  for (const name of Object.keys(form.typed)) {
    if (textAt(form, name) === "") continue;
    const field = parseField(name);
    const isKnown = field !== null && (!("id" in field) || known[field.kind].has(field.id));
    if (!isKnown)
      form.remarks.push({ field: name, message: "The pattern no longer has a place for this, so it is not sent." });
  }
}

function knownIds(pattern: PatternDocument) {
  const ids = (items: readonly { readonly id: string }[] = []) => new Set(items.map(({ id }) => id));
  const measurements = ids(pattern.measurements);
  return {
    worked: ids(pattern.counts),
    length: ids(pattern.lengths),
    changed: measurements,
    reading: measurements,
    fit: new Set(fitAreas(pattern)),
  };
}
