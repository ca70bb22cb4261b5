import { isPlausible, PLAUSIBLE, rangeText, type Tester } from "../pattern";
import { readGrams } from "../tables/read-cell";
import { parseNumber, type LengthUnit } from "../units";
import { CHOICES, fieldOf, keysOf, type YarnPart } from "./fields";
import {
  choiceAt,
  entryAt,
  isBlank,
  readItems,
  itemAt,
  storeText,
  requiredEntry,
  storableFault,
  textAt,
  yesAt,
  type Entry,
  type Form,
  type ReadText,
} from "./form";
import { readBallLength, readWeight, formatYarnLength } from "./yarn-text";

type YarnUsed = Tester["yarn"][number];

const USED: readonly YarnPart[] = ["before", "after", "balls"];

/** Yarn used, oldest entry first, with the keys of the entries; an entry without an amount is ignored. */
export function readTypedYarn(form: Form): { readonly yarn: YarnUsed[]; readonly keys: string[] } {
  const { items: yarn, keys } = readItems(form, keysOf(form.typed, "yarn"), {
    measuredFields: (key) => USED.map((part) => fieldOf.yarn(key, part)),
    read: (key, index) => readYarnUsed(form, key, `yarn[${index}]`),
  });
  return { yarn, keys };
}

function readYarnUsed(form: Form, key: string, path: string): YarnUsed | undefined {
  const fieldName = (part: YarnPart) => fieldOf.yarn(key, part);
  const { pattern, unit } = form.context;
  const yarn = itemAt(form, fieldName("yarn"), { items: pattern.yarns, missing: "Choose which of the yarns this is." });
  const weight = requiredEntry(form, fieldName("gramsPerBall"), {
    entry: entryAt(form, fieldName("gramsPerBall"), readWeight),
    missing: "The weight of a ball, from the yarn label, is missing.",
  });
  const length = requiredEntry(form, fieldName("metresPerBall"), {
    entry: ballLengthAt(form, fieldName("metresPerBall")),
    missing: `How many ${unit === "in" ? "yards" : "metres"} a ball holds, from the yarn label, is missing.`,
  });
  const how = howMeasured(form, key);
  const grams =
    how === "balls" ? byBalls(form, key, weight?.value) : how === "weighed" ? byWeight(form, key) : undefined;
  const extras = {
    swatchInWeight: yesAt(form, fieldName("swatchInWeight")),
    tailsInWeight: yesAt(form, fieldName("tailsInWeight")),
    seamsInWeight: yesAt(form, fieldName("seamsInWeight")),
    kept: yesAt(form, fieldName("kept")),
  };
  if (!yarn || !weight || !length || how === undefined || grams === undefined) return undefined;
  const metresPer100g = length.value / (weight.value / 100);
  if (!isPlausible(metresPer100g, PLAUSIBLE.metresPer100g)) {
    const message = `A ball of so much for ${textAt(form, fieldName("gramsPerBall"))} cannot be right. Check the yarn label.`;
    form.faults.push({ field: fieldName("metresPerBall"), message });
    return undefined;
  }
  recordTexts(form, { path, key, how, ballLength: length.kept });
  for (const [part, said] of Object.entries(extras))
    if (said !== undefined) storeText(form, `${path}.${part}`, said ? "yes" : "no");
  return { yarn: yarn.id, grams, metresPer100g, ...labelAndStrands(form, key) };
}

const MAX_LABEL_LENGTH = 200;

/** The yarn's name and how many strands were held together, where the tester says so. */
function labelAndStrands(form: Form, key: string): Pick<YarnUsed, "label" | "strands"> {
  const field = fieldOf.yarn(key, "label");
  const label = textAt(form, field);
  const fault = storableFault(label, MAX_LABEL_LENGTH);
  if (fault) form.faults.push({ field, message: fault.message });
  const strands = entryAt(form, fieldOf.yarn(key, "strands"), readStrands);
  return {
    ...(label === "" || fault ? {} : { label }),
    ...(strands.status === "read" ? { strands: strands.value } : {}),
  };
}

const MAX_STRANDS = 9;

function readStrands(text: string): ReadText<number> {
  const value = Number(text);
  return Number.isInteger(value) && value >= 1 && value <= MAX_STRANDS
    ? { ok: true, value }
    : { ok: false, message: `Enter a whole number from 1 to ${MAX_STRANDS}, such as 2.` };
}

function ballLengthAt(form: Form, field: string): Entry<number> {
  const { unit } = form.context;
  const entry = entryAt(form, field, (text) => readBallLength(text, unit));
  if (entry.status !== "read") return entry;
  const other: LengthUnit = unit === "in" ? "cm" : "in";
  const bare = readBallLength(entry.text, other);
  const hasUnit = bare.ok && bare.value === entry.value;
  if (hasUnit && formatYarnLength(entry.value, unit) !== entry.text.replace(/\s+/g, " "))
    form.remarks.push({ field, message: `Read as ${formatYarnLength(entry.value, unit)}.` });
  return { ...entry, kept: hasUnit ? entry.text : `${entry.text} ${unit === "in" ? "yd" : "m"}` };
}

/** Weighed or in balls: as chosen, otherwise inferred from what was typed. */
function howMeasured(form: Form, key: string): "weighed" | "balls" | undefined {
  const field = fieldOf.yarn(key, "how");
  const chosen = choiceAt(form, field, CHOICES.how);
  if (chosen.status === "read") return chosen.value;
  if (chosen.status === "faulty") return undefined;
  const isWeighed = !isBlank(form, [fieldOf.yarn(key, "before"), fieldOf.yarn(key, "after")]);
  if (isWeighed && !isBlank(form, [fieldOf.yarn(key, "balls")])) {
    form.faults.push({ field, message: "Choose whether the weights or the number of balls should count." });
    return undefined;
  }
  return isWeighed ? "weighed" : "balls";
}

function byWeight(form: Form, key: string): number | undefined {
  const fields = { before: fieldOf.yarn(key, "before"), after: fieldOf.yarn(key, "after") };
  const before = requiredEntry(form, fields.before, {
    entry: entryAt(form, fields.before, readWeight),
    missing: "What the yarn weighed before you began is missing.",
  });
  const after = requiredEntry(form, fields.after, {
    entry: entryAt(form, fields.after, readWhatIsLeft),
    missing: "What is left is missing; write 0 where nothing is.",
  });
  if (!before || !after) return undefined;
  const grams = before.value - after.value;
  if (isPlausible(grams, PLAUSIBLE.grams)) return grams;
  const message =
    grams <= 0
      ? `This is not less than the ${before.text} that you began with.`
      : `The yarn used must come to ${rangeText(PLAUSIBLE.grams)}.`;
  form.faults.push({ field: fields.after, message });
  return undefined;
}

function byBalls(form: Form, key: string, gramsPerBall: number | undefined): number | undefined {
  const field = fieldOf.yarn(key, "balls");
  const entry = entryAt(form, field, readGrams);
  const balls = requiredEntry(form, field, { entry, missing: "How many balls you used is missing." });
  if (!balls || gramsPerBall === undefined) return undefined;
  const grams = balls.value * gramsPerBall;
  if (isPlausible(grams, PLAUSIBLE.grams)) return grams;
  form.faults.push({ field, message: `The yarn used must come to ${rangeText(PLAUSIBLE.grams)}.` });
  return undefined;
}

function readWhatIsLeft(text: string) {
  const parsed = parseNumber(text);
  return parsed.ok && parsed.value === 0 ? { ok: true as const, value: 0 } : readWeight(text);
}

interface YarnTexts {
  readonly path: string;
  readonly key: string;
  readonly how: "weighed" | "balls";
  readonly ballLength: string | null;
}

/** Stores everything typed about the yarn, because the document holds only the resulting amount. */
function recordTexts(form: Form, { path, key, how, ballLength }: YarnTexts): void {
  const parts: readonly YarnPart[] =
    how === "weighed" ? ["before", "after", "gramsPerBall"] : ["balls", "gramsPerBall"];
  for (const part of parts) storeText(form, `${path}.${part}`, textAt(form, fieldOf.yarn(key, part)));
  storeText(form, `${path}.metresPerBall`, ballLength);
  storeText(form, `${path}.how`, how);
}
