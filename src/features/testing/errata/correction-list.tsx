import type { ReactNode } from "react";
import { Day } from "@/ui/day";
import { ChangedNumber } from "../corrections/changed-number";
import type { ListedCorrection } from "./errata-data";
import { sizesOf } from "./errata-text";

interface CorrectionListProps<Listed extends ListedCorrection> {
  readonly corrections: readonly Listed[];
  /** Stands before date and sizes. */
  readonly before?: (correction: Listed) => ReactNode;
  /** Stands below. */
  readonly below?: (correction: Listed) => ReactNode;
}

/** Corrections, each with its date, its sizes, and old and new numbers. */
export function CorrectionList<Listed extends ListedCorrection>({
  corrections,
  before,
  below,
}: CorrectionListProps<Listed>) {
  return (
    <ul className="grid max-w-3xl gap-3">
      {corrections.map((correction) => (
        <li
          key={correction.correctionId}
          className="numbers rounded-sheet border border-line bg-sheet px-5 py-4 shadow-sheet"
        >
          <p className="text-sm text-soft wrap-anywhere">
            {before?.(correction)}
            <Day at={correction.publishedAt} />, <bdi>{sizesOf(correction.sizes)}</bdi>
          </p>
          <p dir="auto" className="mt-1 whitespace-pre-line wrap-anywhere">
            {correction.text}
          </p>
          {correction.numbers.map(({ what, size, was, becomes }) => (
            <p key={`${what} ${size}`} className="mt-1 wrap-anywhere">
              <span className="text-soft">
                <bdi>{what}</bdi>, <bdi>{size}</bdi>:
              </span>{" "}
              <ChangedNumber was={was} becomes={becomes} />
            </p>
          ))}
          {below?.(correction)}
        </li>
      ))}
    </ul>
  );
}
