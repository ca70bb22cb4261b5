import type { PatternDocument, Swatch, Tester } from "../pattern";
import { cmOfSize, ownValue } from "../pattern/own-value";
import { readCount, readHours } from "../tables/read-cell";
import { blockedOtherwise, type Blocking } from "./blocking";
import { CHOICES, fieldOf } from "./fields";
import { choiceAt, entryAt, storeText, storableFault, textAt, yesAt, type Form } from "./form";
import { lengthAt, readLengthOrNone } from "./length-entry";

type Fit = NonNullable<Tester["fit"]>;

const SCALE = { "-2": -2, "-1": -1, "0": 0, "1": 1, "2": 2 } as const;
/** Longer than any comment on the fit of one body area. */
const MAX_COMMENT_LENGTH = 10_000;

/** All counts as worked: the pattern's number for the size where none was typed. */
export function readTypedCounts(form: Form): Record<string, number> {
  const { pattern, size } = form.context;
  if (yesAt(form, fieldOf.asWritten)) storeText(form, fieldOf.asWritten, "yes");
  return Object.fromEntries(
    pattern.counts.map(({ id }) => {
      const entry = entryAt(form, fieldOf.worked(id), readCount);
      const graded = gradedCount(pattern, id, size);
      const isKept = yesAt(form, fieldOf.workedKept(id)) === true;
      if (entry.status !== "read") return [id, graded];
      storeText(form, `worked.${id}`, entry.kept);
      if (isKept && entry.value !== graded) storeText(form, fieldOf.workedKept(id), "yes");
      return [id, entry.value];
    }),
  );
}

/** A count as the pattern has it in a size, 0 where it has none yet. */
export function gradedCount(pattern: PatternDocument, count: string, size: string): number {
  return ownValue(ownValue(pattern.grading, count), size) ?? 0;
}

/** All lengths as worked, cm; undefined where the pattern has none. */
export function readTypedLengths(form: Form): Record<string, number> | undefined {
  const { pattern, size } = form.context;
  return (
    pattern.lengths &&
    Object.fromEntries(
      pattern.lengths.map(({ id, cm }) => {
        const entry = lengthAt(form, fieldOf.length(id), readLengthOrNone);
        if (entry.status === "read") storeText(form, `workedLengths.${id}`, entry.kept);
        return [id, entry.status === "read" ? entry.value : cmOfSize(cm, size)];
      }),
    )
  );
}

/** How it fits, in the order of `fitAreas`. */
export function readFit(form: Form): Fit[number][] {
  return fitAreas(form.context.pattern).flatMap((area) => {
    const field = { scale: fieldOf.fit(area, "scale"), says: fieldOf.fit(area, "says") };
    const scale = choiceAt(form, field.scale, CHOICES.scale);
    const says = textAt(form, field.says);
    const fault = storableFault(says, MAX_COMMENT_LENGTH);
    if (fault) form.faults.push({ field: field.says, message: fault.message });
    if (scale.status === "blank" && says !== "")
      form.faults.push({ field: field.scale, message: "Choose how it fits here, in addition to your comment." });
    if (scale.status !== "read" || fault) return [];
    return [{ area, scale: SCALE[scale.value], ...(says === "" ? {} : { says }) }];
  });
}

const PREFERS = { "-1": -1, "0": 0, "1": 1 } as const;

/** How close the tester likes the garment, by body area; undefined where they said nothing. */
export function readPrefers(form: Form): Record<string, -1 | 0 | 1> | undefined {
  const said = fitAreas(form.context.pattern).flatMap((area) => {
    const entry = choiceAt(form, fieldOf.fit(area, "prefers"), CHOICES.prefers);
    return entry.status === "read" ? [[area, PREFERS[entry.value]] as const] : [];
  });
  return said.length === 0 ? undefined : Object.fromEntries(said);
}

/**
 * How the garment was blocked; undefined where it was not told.
 *
 * @param swatches of the report. Where the one that counts was blocked otherwise, a remark says so.
 */
export function readBlocking(form: Form, swatches: readonly Swatch[]): Blocking | undefined {
  const entry = choiceAt(form, fieldOf.blocking, CHOICES.blocking);
  if (entry.status !== "read") return undefined;
  const message = blockedOtherwise(swatches, entry.value);
  if (message !== null) form.remarks.push({ field: fieldOf.blocking, message });
  return entry.value;
}

/** Body areas for which the fit is asked: those that the pattern explains, then the others in its sizes. */
export function fitAreas({ bodyMeasurements = [], sizes }: PatternDocument): string[] {
  return [...new Set([...bodyMeasurements.map(({ id }) => id), ...sizes.flatMap(({ body }) => Object.keys(body))])];
}

export function readTypedHours(form: Form): number | undefined {
  const entry = entryAt(form, fieldOf.hours, readHours);
  if (entry.status !== "read") return undefined;
  storeText(form, "hours", entry.kept);
  return entry.value;
}
