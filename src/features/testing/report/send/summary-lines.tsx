import type { SummaryLine } from "./report-summary";

/** Lines of a report: the label, what was typed, and how it is read. */
export function SummaryLines({ lines, nothing }: { readonly lines: readonly SummaryLine[]; readonly nothing: string }) {
  if (lines.length === 0) return <p className="text-soft">{nothing}</p>;
  return (
    <dl className="numbers rounded-sheet border border-line bg-sheet">
      {lines.map(({ label, typed, read }, index) => (
        <div
          key={index}
          className="grid gap-x-4 border-b border-line px-4 py-2.5 last:border-b-0 sm:grid-cols-[2fr_3fr]"
        >
          <dt className="min-w-0 font-semibold wrap-anywhere">
            <bdi>{label}</bdi>
          </dt>
          <dd className="min-w-0 wrap-anywhere">
            <bdi>{typed}</bdi>
            {read === "" ? null : (
              <bdi className="block text-sm text-soft" dir="auto">
                {read}
              </bdi>
            )}
          </dd>
        </div>
      ))}
    </dl>
  );
}
