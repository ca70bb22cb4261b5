import type { CauseInput } from "@/engine/gaps";
import { ownValue, type PatternDocument } from "@/engine/pattern";
import type { AcceptedProposal } from "@/engine/revision";
import type { LengthUnit } from "@/engine/units";
import { inRanges } from "@/ui/in-ranges";
import { inputName } from "../cause-copy";
import { sideWords } from "../side-copy";
import { plain, sized } from "../verdict-copy";

export interface WayWords {
  readonly label: string;
  readonly detail: string;
}

/** Smaller effects, in tolerances, are not listed as explained by a cause. */
const MIN_SHOWN_TOLERANCES = 0.5;
/** Errors of a measurement itself: nothing else on the garment could be checked instead. */
const OF_MEASUREMENT: readonly CauseInput["kind"][] = ["offset", "step", "from"];

/** What accepting an input in one way means, in the designer's words. */
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
        label: `${correct} and recalculate stitches and rows`,
        detail: "Garments then meet your targets. Stitches and rows change as little as possible.",
      }
    : {
        label: `${correct} and keep stitches and rows`,
        detail: "Stitches and rows stay. The measurements you publish change to what garments really measure.",
      };
}

/** The new number of an edging or seam, where it is the same for every size and its error is known. */
function allowanceWay(
  { kind, id, estimate }: CauseInput & { readonly estimate?: number | undefined },
  { pattern, unit }: { readonly pattern: PatternDocument; readonly unit: LengthUnit },
): string | null {
  const cm = pattern.allowances.find((allowance) => allowance.id === id)?.cm;
  if (kind !== "allowance" || estimate === undefined || typeof cm !== "number") return null;
  const becomes = cm + estimate;
  if (Math.sign(becomes) !== Math.sign(cm)) return null;
  const was = plain(Math.abs(cm), unit);
  return `Set ${inputName({ kind, id }, pattern)} to ${plain(Math.abs(becomes), unit)} ${unit} (now ${was})`;
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
        label: `Fix the instructions for size ${label}`,
        detail: `They should make ${graded} of ${name}, as in your grading. No number of the pattern changes.`,
      }
    : {
        label: `Change the grading to ${worked} that testers really worked`,
        detail: "The instructions stay. The measurement you publish for this size changes.",
      };
}

/** What is corrected in the pattern. */
function correctWords(input: CauseInput, pattern: PatternDocument): string {
  const name = inputName(input, pattern);
  switch (input.kind) {
    case "allowance":
      return `Correct the edging or seam ${name}`;
    case "settle":
      return `Correct how ${name} changes from swatch to garment`;
    case "stretch":
      return `Correct how ${name} stretches when worn`;
    case "count":
      return `Correct ${name}`;
    case "offset":
      return `Add a correction to ${name}`;
    case "step":
      return `Add a correction to ${name} that grows with the size`;
    case "from":
      return `Add a correction to ${name} from size ${sizeLabel(input, pattern)} up`;
  }
}

/** How to tell apart inputs that no report can: one thing to check for each. */
export function tellApartSentence(inputs: readonly CauseInput[], pattern: PatternDocument): string {
  const onGarment = inputs.filter(({ kind }) => !OF_MEASUREMENT.includes(kind));
  const looked = onGarment.length > 0 ? onGarment : inputs;
  const checks = [...new Set(looked.map((input) => checkWords(input, pattern)))];
  return `Reports can’t tell these apart. To find out, ${checks.join(", or ")}.`;
}

function checkWords(input: CauseInput, pattern: PatternDocument): string {
  const name = inputName(input, pattern);
  switch (input.kind) {
    case "allowance":
      return `measure ${name} itself on a finished garment`;
    case "settle":
      return `count the gauge on a finished garment, ${input.direction === "rows" ? "lengthwise" : "across"} and compare it with its swatch`;
    case "stretch":
      return `measure a finished garment flat, and again when worn`;
    case "count":
      return `count ${name} on a finished garment in size ${sizeLabel(input, pattern)}`;
    case "offset":
    case "step":
    case "from":
      return `ask for ${name} from the smallest and the largest size without a report`;
  }
}

/** The cells that a cause explains, by measurement: `Neck width 1.6 cm too narrow in every size`. */
export function movedWords(
  pattern: PatternDocument,
  { movesCm, estimate, unit }: { movesCm: readonly number[]; estimate: number; unit: LengthUnit },
): string {
  const count = pattern.measurements.length;
  const told = pattern.measurements.flatMap((measurement, index) => {
    const { label, toleranceCm } = measurement;
    const context = { words: sideWords(measurement), unit };
    const cells = pattern.sizes.map((size, s) => ({
      size,
      tolerances: (estimate * (movesCm[s * count + index] ?? 0)) / toleranceCm,
    }));
    const some = cells.filter(({ tolerances }) => Math.abs(tolerances) >= MIN_SHOWN_TOLERANCES);
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
        const upTo = sized(most * toleranceCm, context) === sized(least * toleranceCm, context) ? "" : "up to ";
        const where = sizesWords(
          group.map(({ size }) => size.id),
          pattern,
        );
        return `${label} ${upTo}${sized(most * toleranceCm, context)} in ${where}`;
      });
  });
  return told.length === 0 ? "" : `${told.join("; ")}.`;
}

/** `every size`, `XS to M`, `XS, M and 2X`: neighbouring sizes are given as a range. */
function sizesWords(ids: readonly string[], { sizes }: PatternDocument): string {
  if (ids.length === sizes.length) return "every size";
  return inRanges(
    sizes.map(({ label }) => label),
    (index) => ids.includes(sizes[index]?.id ?? ""),
  );
}

function sizeLabel({ size }: CauseInput, { sizes }: PatternDocument): string {
  return sizes.find(({ id }) => id === size)?.label ?? "";
}
