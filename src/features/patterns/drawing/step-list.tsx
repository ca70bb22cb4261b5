import { sectionText, stepText, type StepInSizes } from "@/engine/garment";
import { ownValue, type PatternDocument, type Size } from "@/engine/pattern";
import { FAULT_SIGN } from "./drawing-copy";
import type { PieceBoard } from "./piece-board";

interface StepListProps {
  readonly pattern: PatternDocument;
  readonly board: PieceBoard;
  /** One size, or all of them. */
  readonly sizes: readonly Size[];
}

/** The steps of a piece with their numbers, what is on the needle after each, and what cannot be worked. */
export function StepList({ pattern, board, sizes }: StepListProps) {
  const { steps } = board;
  if (steps.length === 0) return null;
  return (
    <ol className="numbers grid list-decimal gap-2 pl-6 marker:text-soft">
      {steps.map((worked) => (
        <li key={worked.step.id} className="wrap-anywhere">
          {stepSentence(pattern, worked, sizes)}.
          <SectionWords pattern={pattern} worked={worked} sizes={sizes} />
          <NeedleWords worked={worked} sizes={sizes} />
          {stepFaults(worked, sizes).map((says) => (
            <p key={says} className="font-semibold text-thread">
              {FAULT_SIGN} {says}
            </p>
          ))}
        </li>
      ))}
    </ol>
  );
}

/** How a section of format 1 is shaped; sizes in which it is the same are told together. */
function SectionWords({
  pattern,
  worked,
  sizes,
}: Pick<StepListProps, "pattern" | "sizes"> & { readonly worked: StepInSizes }) {
  const said = sectionWords(pattern, worked, sizes);
  return said.map(({ text, labels }) => (
    <p key={text}>
      {said.length > 1 ? `${labels.join(", ")}: ` : ""}
      {text}
    </p>
  ));
}

/** The same as sentences, each with the sizes that it is said of. */
export function sectionWords(pattern: PatternDocument, { step, noun }: StepInSizes, sizes: readonly Size[]) {
  const said = new Map<string, string[]>();
  if (step.do === "section")
    for (const { id, label } of sizes) {
      const text = sectionText(pattern, { step, noun, size: id });
      if (text !== null) said.set(text, [...(said.get(text) ?? []), label]);
    }
  return [...said].map(([text, labels]) => ({ text, labels }));
}

function NeedleWords({ worked, sizes }: { readonly worked: StepInSizes; readonly sizes: readonly Size[] }) {
  const { step } = worked;
  const shown = inSizes(worked, sizes).flatMap(({ onNeedle }) => (onNeedle.length === 1 ? onNeedle : []));
  if (step.do === "end" || step.do === "start" || shown.length < sizes.length) return null;
  return <span className="text-soft"> {bySize(shown.map(({ stitches }) => stitches))} stitches.</span>;
}

/** What a step does, in one size or in all of them. */
export function stepSentence(
  { counts, grading, lengths = [] }: PatternDocument,
  { step, noun }: StepInSizes,
  sizes: readonly Size[],
): string {
  return stepText(step, {
    noun,
    length: (id) => `to “${lengths.find((length) => length.id === id)?.label ?? id}”`,
    number: (number) => {
      if (typeof number !== "object") return String(number);
      const share = Number(number.times ?? 1) / Number(number.over ?? 1);
      const graded = sizes.map(({ id }) => ownValue(ownValue(grading, number.count), id));
      if (graded.some((value) => value === undefined))
        return `“${counts.find(({ id }) => id === number.count)?.label ?? number.count}”`;
      return bySize(graded.map((value) => (value ?? 0) * share));
    },
  });
}

/** Faults of a step in some sizes, each once. */
export function stepFaults(worked: StepInSizes, sizes: readonly Size[]): string[] {
  return [...new Set(inSizes(worked, sizes).flatMap(({ status, messages }) => (status === "fault" ? messages : [])))];
}

function inSizes({ sizes: all }: StepInSizes, sizes: readonly Size[]) {
  return all.filter(({ size }) => sizes.some(({ id }) => id === size));
}

/** `6 (6, 8)`, or `6` where it is the same in all. */
function bySize(numbers: readonly number[]): string {
  const [first, ...others] = numbers;
  return others.every((number) => number === first) ? String(first) : `${first} (${others.join(", ")})`;
}
