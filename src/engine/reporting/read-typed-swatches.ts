import { isPlausible, PLAUSIBLE, type CountedGauge, type Swatch } from "../pattern";
import { readLength, readSwatchCount, readTool } from "../tables/read-cell";
import { GAUGE_WIDTH_CM, type LengthUnit } from "../units";
import { CHOICES, fieldOf, keysOf, type SwatchPart } from "./fields";
import {
  choiceAt,
  entryAt,
  isBlank,
  readItems,
  itemAt,
  storeText,
  requiredEntry,
  textAt,
  yesAt,
  type Entry,
  type Form,
  type ReadText,
} from "./form";
import { lengthAt } from "./length-entry";
import { readSwatchTool } from "./tool-sizes";

const MEASURED: readonly SwatchPart[] = ["stitches", "across", "rows", "along"];
const BEFORE: readonly SwatchPart[] = ["beforeStitches", "beforeAcross", "beforeRows", "beforeAlong"];

/** The typed swatches, oldest first, with their keys; entries without any number are ignored. */
export function readTypedSwatches(form: Form): { readonly swatches: Swatch[]; readonly keys: string[] } {
  const { items: swatches, keys } = readItems(form, keysOf(form.typed, "swatch"), {
    measuredFields: (key) => MEASURED.map((part) => fieldOf.swatch(key, part)),
    read: (key, index) => readSwatch(form, key, `swatches[${index}]`),
  });
  return { swatches, keys };
}

function readSwatch(form: Form, key: string, path: string): Swatch | undefined {
  const fieldName = (part: SwatchPart) => fieldOf.swatch(key, part);
  const { pattern } = form.context;
  const tool = pattern.craft === "crochet" ? "hook" : "needles";
  const number = (part: SwatchPart, read: (text: string) => ReadText<number>, missing: string) =>
    requiredEntry(form, fieldName(part), { entry: entryAt(form, fieldName(part), read), missing });
  const length = (part: SwatchPart, missing: string) =>
    requiredEntry(form, fieldName(part), { entry: lengthAt(form, fieldName(part), readSwatchLength), missing });
  const fabric = itemAt(form, fieldName("fabric"), {
    items: pattern.fabrics,
    missing: "Choose the fabric of this swatch.",
  });
  const parts = {
    toolMm: number(
      "toolMm",
      (text) => readSwatchTool(text, { craft: pattern.craft, ...(fabric ? { patternMm: fabric.toolMm } : {}) }),
      `The size of your ${tool} is missing.`,
    ),
    stitches: number("stitches", readSwatchCount, "The number of stitches is missing."),
    acrossCm: length("across", "The width that you counted the stitches over is missing."),
    rows: number("rows", readSwatchCount, "The number of rows is missing."),
    alongCm: length("along", "The height that you counted the rows over is missing."),
  };
  const before = readBefore(form, fieldName, { path: `${path}.before`, after: parts });
  const washed = readWashed(form, fieldName("washed"));
  const blocking = choiceAt(form, fieldName("blocking"), CHOICES.blocking);
  const on = choiceAt(form, fieldName("on"), CHOICES.on);
  const used = yesAt(form, fieldName("used"));
  const worked = choiceAt(form, fieldName("worked"), CHOICES.worked);
  const kept = yesAt(form, fieldName("kept"));
  const { toolMm, stitches, acrossCm, rows, alongCm } = parts;
  if (toolMm && !readTool(toolMm.text).ok)
    form.remarks.push({ field: fieldName("toolMm"), message: `Read as ${toolMm.value} mm.` });
  if (!fabric || !toolMm || !stitches || !acrossCm || !rows || !alongCm || washed === undefined) return undefined;
  const isGauge = gaugeAt(form, fieldName("stitches"), stitches.value / acrossCm.value);
  if (!gaugeAt(form, fieldName("rows"), rows.value / alongCm.value) || !isGauge) return undefined;
  if (before === undefined) return undefined;
  for (const [part, entry] of Object.entries({ toolMm, stitches, acrossCm, rows, alongCm }))
    storeText(form, `${path}.${part}`, entry.kept);
  if (worked.status === "read") {
    storeText(form, `${path}.worked`, worked.value);
    if (fabric.worked !== undefined && (fabric.worked === "flat") !== (worked.value === "flat"))
      form.remarks.push({ field: fieldName("worked"), message: otherWay(worked.value) });
  }
  if (kept) storeText(form, `${path}.kept`, "yes");
  return {
    fabric: fabric.id,
    toolMm: toolMm.value,
    stitches: stitches.value,
    acrossCm: acrossCm.value,
    rows: rows.value,
    alongCm: alongCm.value,
    washed,
    ...(before === null ? {} : { before }),
    ...(blocking.status === "read" ? { blocking: blocking.value } : {}),
    ...(on.status === "read" ? { on: on.value } : {}),
    ...(used ? { used } : {}),
  };
}

interface AfterBlocking {
  readonly path: string;
  /** Widths that are not typed are those of the blocked swatch. */
  readonly after: Readonly<Record<"acrossCm" | "alongCm", ReadLength | undefined>>;
}

type ReadLength = Pick<Extract<Entry<number>, { readonly status: "read" }>, "value" | "kept">;

/** What was counted before blocking: stitches and rows, or neither. @returns null where neither is typed, undefined where something is missing or faulty. */
function readBefore(
  form: Form,
  fieldName: (part: SwatchPart) => string,
  { path, after }: AfterBlocking,
): CountedGauge | null | undefined {
  if (isBlank(form, BEFORE.map(fieldName))) return null;
  const count = (part: SwatchPart, missing: string) =>
    requiredEntry(form, fieldName(part), { entry: entryAt(form, fieldName(part), readSwatchCount), missing });
  const length = (part: SwatchPart, blocked: ReadLength | undefined): ReadLength | undefined => {
    const entry = lengthAt(form, fieldName(part), readSwatchLength);
    if (entry.status === "blank") return blocked && { value: blocked.value, kept: null };
    return entry.status === "read" ? entry : undefined;
  };
  const stitches = count("beforeStitches", "The number of stitches before blocking is missing.");
  const acrossCm = length("beforeAcross", after.acrossCm);
  const rows = count("beforeRows", "The number of rows before blocking is missing.");
  const alongCm = length("beforeAlong", after.alongCm);
  if (!stitches || !acrossCm || !rows || !alongCm) return undefined;
  const isGauge = gaugeAt(form, fieldName("beforeStitches"), stitches.value / acrossCm.value);
  if (!gaugeAt(form, fieldName("beforeRows"), rows.value / alongCm.value) || !isGauge) return undefined;
  for (const [part, entry] of Object.entries({ stitches, acrossCm, rows, alongCm }))
    storeText(form, `${path}.${part}`, entry.kept);
  return { stitches: stitches.value, acrossCm: acrossCm.value, rows: rows.value, alongCm: alongCm.value };
}

function readSwatchLength(text: string, unit: LengthUnit) {
  return readLength(text, unit, PLAUSIBLE.swatchCm);
}

/** Whether a count over a width can be a gauge; if not, a fault is added at the count's field. */
function gaugeAt(form: Form, field: string, perCm: number): boolean {
  if (isPlausible(perCm * GAUGE_WIDTH_CM, PLAUSIBLE.gauge)) return true;
  const { min, max } = PLAUSIBLE.gauge;
  const over = form.context.unit === "in" ? "4 in" : "10 cm";
  form.faults.push({
    field,
    message: `This must come to between ${min} and ${max} over ${over}. Check the width too.`,
  });
  return false;
}

function readWashed(form: Form, field: string): boolean | undefined {
  if (textAt(form, field) === "") form.faults.push({ field, message: "Say whether this swatch was washed and dried." });
  return yesAt(form, field);
}

function otherWay(worked: "flat" | "round"): string {
  const pattern = worked === "flat" ? "in rounds" : "flat";
  return `The garment is worked ${pattern}. Gauge often differs between the two, so a swatch worked ${pattern} is more reliable.`;
}
