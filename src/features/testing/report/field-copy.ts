import {
  keysOf,
  parseField,
  type FitPart,
  type ReadingPart,
  type ReportContext,
  type SwatchPart,
  type TypedReport,
  type YarnPart,
} from "@/engine/reporting";

type Named = readonly { readonly id: string; readonly label: string }[];

/** What a field is called outside its form: `Bust, what the tape says`. */
export function fieldWords(name: string, context?: ReportContext, typed: TypedReport = {}): string {
  const field = parseField(name);
  const pattern = context?.pattern;
  const labelOf = (items: Named | undefined, id: string) => items?.find((item) => item.id === id)?.label ?? id;
  switch (field?.kind) {
    case undefined:
      return name;
    case "swatch":
      return `Swatch ${numberOf(field.key, keysOf(typed, "swatch"))}, ${SWATCH[field.part]}`;
    case "worked":
      return `${labelOf(pattern?.counts, field.id)}${field.part === "kept" ? ", your confirmation" : ""}`;
    case "length":
      return labelOf(pattern?.lengths, field.id);
    case "changed":
      return `${labelOf(pattern?.measurements, field.id)}, changed on purpose`;
    case "reading":
      return `${labelOf(pattern?.measurements, field.id)}, ${READING[field.part]}`;
    case "yarn":
      return `Yarn ${numberOf(field.key, keysOf(typed, "yarn"))}, ${YARN[field.part]}`;
    case "fit":
      return `${labelOf(pattern?.bodyMeasurements, field.id)}, ${FIT[field.part]}`;
    case "asWritten":
      return "Everything else as in the pattern";
    case "hours":
      return "Hours";
    case "blocking":
      return "How the garment was blocked";
  }
}

function numberOf(key: string, keys: readonly string[]): string {
  const index = keys.indexOf(key);
  return index === -1 ? key : String(index + 1);
}

const SWATCH: Readonly<Record<SwatchPart, string>> = {
  fabric: "fabric",
  toolMm: "needle or hook",
  stitches: "stitches",
  across: "width",
  rows: "rows",
  along: "height",
  beforeStitches: "stitches before blocking",
  beforeAcross: "width before blocking",
  beforeRows: "rows before blocking",
  beforeAlong: "height before blocking",
  washed: "washed",
  blocking: "how it was blocked",
  on: "where you counted",
  worked: "how it was worked",
  used: "whether it counts",
  kept: "your confirmation",
};

const READING: Readonly<Record<ReadingPart, string>> = {
  value: "what the tape says",
  way: "how it was measured",
  state: "washed",
  kept: "your confirmation",
};

const YARN: Readonly<Record<YarnPart, string>> = {
  yarn: "which yarn",
  how: "how it was measured",
  before: "weight before",
  after: "weight after",
  balls: "balls",
  gramsPerBall: "weight of a ball",
  metresPerBall: "length of a ball",
  swatchInWeight: "whether the swatch is included",
  tailsInWeight: "whether the tails are included",
  seamsInWeight: "whether the seams are included",
  label: "its name",
  strands: "strands held together",
  kept: "your confirmation",
};

const FIT: Readonly<Record<FitPart, string>> = {
  scale: "how it fits",
  says: "your words",
  prefers: "how close you like it",
};
