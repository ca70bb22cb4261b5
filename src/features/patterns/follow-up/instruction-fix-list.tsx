import Link from "next/link";
import type { ReactNode } from "react";
import type { PatternDocument } from "@/engine/pattern";
import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import { tickOff } from "./follow-up-actions";
import type { InstructionFix } from "./instruction-fix-data";

export interface InstructionFixListProps {
  readonly patternId: string;
  readonly pattern: Pick<PatternDocument, "sizes" | "counts">;
  readonly fixes: readonly InstructionFix[];
  readonly mayEdit: boolean;
}

/** What is still to be put right in the written instructions. */
export function InstructionFixList({ patternId, pattern, fixes, mayEdit }: InstructionFixListProps) {
  if (fixes.length === 0) return null;
  return (
    <Section
      title="To fix in the instructions"
      intro="From changes that you accepted. Each stays until the text gives the right number, or you tick it off."
    >
      <ul className="grid max-w-3xl gap-3">
        {fixes.map((fix) => (
          <li
            key={fix.fixId}
            className="numbers rounded-sheet border border-line border-l-4 border-l-thread bg-sheet px-4 py-3 wrap-anywhere"
          >
            <p className="font-semibold">{fixWords(fix, pattern)}</p>
            {fix.passages.map(({ place, text }) => (
              <p key={place.block} className="mt-1 text-sm text-soft">
                In “<bdi>{text.length > LONGEST ? `${text.slice(0, LONGEST).toWellFormed()}…` : text}</bdi>”
              </p>
            ))}
            {fix.gives === "wrong" ? null : (
              <p className="mt-1 text-sm text-soft">
                {fix.gives === "right"
                  ? `The text gives ${fix.becomes} here. Look for what makes testers work ${fix.was}: an increase, a later step, a schematic.`
                  : `Sizewright did not find ${fix.was} in a list of all sizes. Look for it where your text gives this count.`}
              </p>
            )}
            {mayEdit ? (
              <div className="mt-2 flex flex-wrap items-center gap-x-5 gap-y-1">
                <Link
                  href={`/patterns/${patternId}/edit?part=text`}
                  className="text-link inline-flex min-h-11 items-center"
                >
                  Edit the text
                </Link>
                <OneButtonForm
                  action={tickOff}
                  sends={{ patternId, fixId: fix.fixId }}
                  button="Tick off"
                  waiting="One moment …"
                  about={fixWords(fix, pattern)}
                />
              </div>
            ) : null}
          </li>
        ))}
      </ul>
    </Section>
  );
}

const LONGEST = 160;

/** The same at the passages themselves, by the number of the passage. */
export function fixesUnderPassages(
  fixes: readonly InstructionFix[],
  pattern: InstructionFixListProps["pattern"],
): ReadonlyMap<number, ReactNode> {
  const numbers = [...new Set(fixes.flatMap(({ passages }) => passages.map(({ place }) => place.block)))];
  return new Map(
    numbers.map((number) => [
      number,
      <ul
        key={number}
        className="numbers my-2 border-l-4 border-thread bg-thread-tint px-3 py-2 text-base wrap-anywhere"
      >
        {fixes
          .filter(({ passages }) => passages.some(({ place }) => place.block === number))
          .map((fix) => (
            <li key={fix.fixId}>
              <b>To fix.</b> {fixWords(fix, pattern)}
            </li>
          ))}
      </ul>,
    ]),
  );
}

/** `Size 2X: 292 stitches for “Body stitches”, not 299.` */
export function fixWords(
  { size, count, was, becomes }: Pick<InstructionFix, "size" | "count" | "was" | "becomes">,
  { sizes, counts }: InstructionFixListProps["pattern"],
): string {
  const of = counts.find(({ id }) => id === count);
  const label = sizes.find(({ id }) => id === size)?.label ?? size;
  return `Size ${label}: ${becomes} ${of?.direction ?? "stitches"} for “${of?.label ?? count}”, not ${was}.`;
}
