import type { ReactNode } from "react";
import type { SummaryLine } from "./report-summary";

interface SummaryLinesProps {
  readonly lines: readonly SummaryLine[];
  readonly nothing: string;
  /** What stands under a line, by its index. */
  readonly under?: (index: number, line: SummaryLine) => ReactNode;
}

/** Lines of a report: the label, what was typed, and how it is read. */
export function SummaryLines({ lines, nothing, under }: SummaryLinesProps) {
  if (lines.length === 0) return <p className="text-soft">{nothing}</p>;
  return (
    <dl className="numbers rounded-sheet border border-line bg-sheet">
      {lines.map((line, index) => (
        <div
          key={index}
          className="grid gap-x-4 border-b border-line px-4 py-2.5 last:border-b-0 sm:grid-cols-[2fr_3fr]"
        >
          <dt className="min-w-0 font-semibold wrap-anywhere">
            <bdi>{line.label}</bdi>
          </dt>
          <dd className="min-w-0 wrap-anywhere">
            <bdi>{line.typed}</bdi>
            {line.read === "" ? null : (
              <bdi className="block text-sm text-soft" dir="auto">
                {line.read}
              </bdi>
            )}
            {under?.(index, line)}
          </dd>
        </div>
      ))}
    </dl>
  );
}
