import { isPlausible, PLAUSIBLE, rangeText, type Measurement, type Reading } from "../pattern";
import { CHOICES, fieldOf, keysOf, type ReadingPart } from "./fields";
import { choiceAt, isBlank, storeText, yesAt, type Form } from "./form";
import { lengthAt } from "./length-entry";

/** Suffix of the stored text of a girth that was typed as the width it has laid flat. */
export const LAID_FLAT = ", laid flat";

/** Readings in the pattern's order of measurements, with their keys. */
export function readTypedReadings(form: Form): { readonly readings: Reading[]; readonly keys: string[] } {
  const readings: Reading[] = [];
  const keys: string[] = [];
  for (const measurement of form.context.pattern.measurements) {
    for (const key of keysOf(form.typed, { reading: measurement.id })) {
      const reading = readReading(form, { measurement, key, path: `readings[${readings.length}]` });
      if (reading === undefined) continue;
      readings.push(reading);
      keys.push(key);
    }
  }
  return { readings, keys };
}

/** Measurements that were changed on purpose, in the pattern's order. */
export function readChanged(form: Form): string[] {
  return form.context.pattern.measurements.flatMap(({ id }) => (yesAt(form, fieldOf.changed(id)) ? [id] : []));
}

interface Place {
  readonly measurement: Measurement;
  readonly key: string;
  readonly path: string;
}

function readReading(form: Form, { measurement, key, path }: Place): Reading | undefined {
  const fieldName = (part: ReadingPart) => fieldOf.reading(measurement.id, key, part);
  if (isBlank(form, [fieldName("value")])) return undefined;
  const length = lengthAt(form, fieldName("value"));
  const way = choiceAt(form, fieldName("way"), CHOICES.way);
  const state = choiceAt(form, fieldName("state"), CHOICES.state);
  const kept = yesAt(form, fieldName("kept"));
  if (length.status !== "read" || way.status === "faulty" || state.status === "faulty") return undefined;
  const isFlat = way.status === "read" && way.value === "flat";
  const isDoubled = isFlat && measurement.girth === true;
  const cm = isDoubled ? length.value * 2 : length.value;
  if (!isPlausible(cm, PLAUSIBLE.finishedCm)) {
    const message = `Doubled, this must be ${rangeText(PLAUSIBLE.finishedCm, form.context.unit)}.`;
    form.faults.push({ field: fieldName("value"), message });
    return undefined;
  }
  storeText(form, `${path}.cm`, isDoubled ? `${length.kept ?? `${length.value} cm`}${LAID_FLAT}` : length.kept);
  if (kept) storeText(form, `${path}.kept`, "yes");
  if (isFlat)
    form.remarks.push({
      field: fieldName("value"),
      message: isDoubled ? `Doubled: ${form.context.formatLength(cm)} around.` : "Not doubled: this is a width.",
    });
  const doneAs = way.status === "read" && !(isFlat && !isDoubled) ? way.value : undefined;
  return {
    measurement: measurement.id,
    cm,
    ...(state.status === "read" ? { state: state.value } : {}),
    ...(doneAs === undefined ? {} : { way: doneAs === "around" ? doneAs : "flat doubled" }),
  };
}
