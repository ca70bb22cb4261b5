import { ownValue, type PatternDocument } from "@/engine/pattern";
import type { InstructionError } from "@/engine/revision";
import type { NumberChange } from "@/features/calls/correction-schema";

interface Accepted {
  readonly before: PatternDocument;
  readonly after: PatternDocument;
  readonly instructionErrors: readonly InstructionError[];
}

/** What is to be put right in the text: for each accepted error, the number that testers worked from and that of the new grading. */
export function textFixes({ before, after, instructionErrors }: Accepted): NumberChange[] {
  return instructionErrors.flatMap(({ count, size, amount }) => {
    const [graded, becomes] = [before, after].map(({ grading }) => ownValue(ownValue(grading, count), size));
    if (graded === undefined || becomes === undefined) return [];
    const was = Math.max(0, Math.round(graded + amount));
    return was === becomes ? [] : [{ count, size, was, becomes }];
  });
}

/** The correction's words, which testers read: `Size 2X: work 292 stitches for “Body stitches”, not 299.` */
export function correctionText(fixes: readonly NumberChange[], { sizes, counts }: PatternDocument): string {
  return fixes
    .map(({ count, size, was, becomes }) => {
      const of = counts.find(({ id }) => id === count);
      const label = sizes.find(({ id }) => id === size)?.label ?? size;
      return `Size ${label}: work ${becomes} ${of?.direction ?? "stitches"} for “${of?.label ?? count}”, not ${was}.`;
    })
    .join("\n");
}
