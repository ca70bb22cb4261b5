import type { CauseInput } from "@/engine/gaps";
import { ownValue, type PatternDocument } from "@/engine/pattern";
import type { AcceptedProposal } from "@/engine/revision";
import type { LengthUnit } from "@/engine/units";
import { inputName } from "./cause-words";
import { plain, sized } from "./verdict-words";

export interface WayWords {
  readonly label: string;
  readonly detail: string;
}

/** Less than so many tolerances is not worth telling as explained by a cause. */
const TOLD_TOLERANCES = 0.5;
/** Errors of a measurement as such: there is nothing on the garment that could be looked at instead. */
const OF_MEASUREMENT: readonly CauseInput["kind"][] = ["offset", "step", "from"];

/** What taking an input in one way means, in the designer's words. */
export function wayWords(
  input: CauseInput & { readonly estimate?: number | undefined },
  {
    by,
    pattern,
    unit,
  }: { readonly by: AcceptedProposal["by"]; readonly pattern: PatternDocument; readonly unit: LengthUnit },
): WayWords {
  if (input.kind === "count") return countWords(input, { by, pattern });
  const correct = allowanceWay(input, { pattern, unit }) ?? correctWords(input, pattern);
  return by === "input"
    ? {
        label: `${correct}, and work the counts out anew`,
        detail: "The garment then comes to your target. Counts change as little as that takes.",
      }
    : {
        label: `${correct}, and keep the counts`,
        detail: "No stitch changes. The measurement that you publish moves to what garments really come to.",
      };
}

/** What an allowance then does, where one number stands for every size and its error is known. */
function allowanceWay(
  { kind, id, estimate }: CauseInput & { readonly estimate?: number | undefined },
  { pattern, unit }: { readonly pattern: PatternDocument; readonly unit: LengthUnit },
): string | null {
  const cm = pattern.allowances.find((allowance) => allowance.id === id)?.cm;
  if (kind !== "allowance" || estimate === undefined || typeof cm !== "number") return null;
  const becomes = cm + estimate;
  if (Math.sign(becomes) !== Math.sign(cm)) return null;
  const words = `${becomes < 0 ? "takes" : "adds"} about ${plain(Math.abs(becomes), unit)} ${unit}`;
  return `Write down that ${inputName({ kind, id }, pattern)} ${words}, not ${plain(Math.abs(cm), unit)} ${unit}`;
}

function countWords(
  { id, size = "", estimate }: CauseInput & { readonly estimate?: number | undefined },
  { by, pattern }: { readonly by: AcceptedProposal["by"]; readonly pattern: PatternDocument },
): WayWords {
  const label = pattern.sizes.find((item) => item.id === size)?.label ?? "";
  const graded = ownValue(ownValue(pattern.grading, id), size) ?? 0;
  const worked = estimate === undefined ? "the number" : `the ${graded + Math.round(estimate)}`;
  const name = inputName({ kind: "count", id }, pattern);
  return by === "input"
    ? {
        label: `Mend the instructions of size ${label}`,
        detail: `They should make ${graded} of ${name}, as your grading says. No number of the pattern changes.`,
      }
    : {
        label: `Take ${worked} that testers really worked into the grading`,
        detail: "The instructions stay, and the measurement that you publish for this size moves.",
      };
}

/** What is corrected, where it stands. */
function correctWords(input: CauseInput, pattern: PatternDocument): string {
  const name = inputName(input, pattern);
  switch (input.kind) {
    case "allowance":
      return `Correct the allowance ${name}`;
    case "settle":
      return `Write down how ${name === "Every fabric" ? "every fabric" : name} comes out in the garment`;
    case "stretch":
      return `Correct how ${name} stretches when worn`;
    case "count":
      return `Correct ${name}`;
    case "offset":
      return `Note a correction of ${name}`;
    case "step":
      return `Note a correction of ${name} that grows with the size`;
    case "from":
      return `Note a correction of ${name} from size ${sizeLabel(input, pattern)} upward`;
  }
}

/** What would tell inputs apart that no report can: one thing to look at for each. */
export function tellApartWords(inputs: readonly CauseInput[], pattern: PatternDocument): string {
  const onGarment = inputs.filter(({ kind }) => !OF_MEASUREMENT.includes(kind));
  const looked = onGarment.length > 0 ? onGarment : inputs;
  const checks = [...new Set(looked.map((input) => checkWords(input, pattern)))];
  return `No report can tell these apart. What would: ${checks.join("; or ")}.`;
}

function checkWords(input: CauseInput, pattern: PatternDocument): string {
  const name = inputName(input, pattern);
  switch (input.kind) {
    case "allowance":
      return `measure ${name} itself on a finished garment`;
    case "settle":
      return `count the gauge on a finished garment, ${input.direction === "rows" ? "lengthwise" : "across"}, and compare it with its swatch`;
    case "stretch":
      return `measure a finished garment lying flat, and again when worn`;
    case "count":
      return `count ${name} on a finished garment in size ${sizeLabel(input, pattern)}`;
    case "offset":
    case "step":
    case "from":
      return `ask for ${name} from the smallest and the largest size that nobody has reported yet`;
  }
}

/** The cells that a cause explains, by measurement: `Neck width: 1.6 cm too small in every size`. */
export function movedWords(
  pattern: PatternDocument,
  { movesCm, estimate, unit }: { movesCm: readonly number[]; estimate: number; unit: LengthUnit },
): string {
  const count = pattern.measurements.length;
  const told = pattern.measurements.flatMap(({ label, toleranceCm }, at) => {
    const cells = pattern.sizes.map((size, s) => ({
      size,
      tolerances: (estimate * (movesCm[s * count + at] ?? 0)) / toleranceCm,
    }));
    const some = cells.filter(({ tolerances }) => Math.abs(tolerances) >= TOLD_TOLERANCES);
    const groups = [some.filter(({ tolerances }) => tolerances < 0), some.filter(({ tolerances }) => tolerances > 0)];
    return groups
      .filter((group) => group.length > 0)
      .map((group) => {
        const most = group.reduce(
          (far, cell) => (Math.abs(cell.tolerances) > Math.abs(far) ? cell.tolerances : far),
          0,
        );
        const least = group.reduce(
          (near, cell) => (Math.abs(cell.tolerances) < Math.abs(near) ? cell.tolerances : near),
          most,
        );
        const upTo = sized(most * toleranceCm, unit) === sized(least * toleranceCm, unit) ? "" : "up to ";
        const where = sizesWords(
          group.map(({ size }) => size.id),
          pattern,
        );
        return `${label} ${upTo}${sized(most * toleranceCm, unit)} in ${where}`;
      });
  });
  return told.length === 0 ? "" : `${told.join("; ")}.`;
}

/** `every size`, `XS to M`, `XS, M and 2X`: neighbours are told as a stretch. */
export function sizesWords(ids: readonly string[], { sizes }: PatternDocument): string {
  if (ids.length === sizes.length) return "every size";
  const stretches: string[][] = [];
  sizes.forEach(({ id, label }, at) => {
    if (!ids.includes(id)) return;
    const last = stretches.at(-1);
    const before = sizes[at - 1];
    if (last !== undefined && before !== undefined && ids.includes(before.id)) last.push(label);
    else stretches.push([label]);
  });
  const words = stretches.flatMap((labels) => (labels.length > 2 ? [`${labels[0]} to ${labels.at(-1)}`] : labels));
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

function sizeLabel({ size }: CauseInput, { sizes }: PatternDocument): string {
  return sizes.find(({ id }) => id === size)?.label ?? "";
}
