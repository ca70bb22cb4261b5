import { DeviationStrip } from "@/ui/deviation-strip";
import type { Limits, TesterBoard, TesterRow } from "../tester-board";
import { noSentence, testerSentences } from "../tester-words";

/** A row a tester: what there is to say of her, and her measurements as dots beside the others'. */
export function TesterConsistency({ board }: { readonly board: TesterBoard }) {
  const { rows, limits, reach } = board;
  return (
    <>
      {limits === null ? null : <Legend />}
      <div className="rounded-sheet border border-line bg-sheet shadow-sheet">
        {limits === null ? null : (
          <div
            aria-hidden="true"
            className="grid gap-x-6 border-b border-line-strong px-4 py-2 text-sm text-soft lg:grid-cols-[14rem_1fr_22rem]"
          >
            <span className="max-lg:hidden">Tester, size</span>
            <span className="flex justify-between">
              <span>← smaller than the others’</span>
              <span>larger →</span>
            </span>
          </div>
        )}
        <ul>
          {rows.map((row) => (
            <Row key={row.tester} {...{ row, limits, reach }} />
          ))}
        </ul>
      </div>
    </>
  );
}

function Legend() {
  return (
    <p className="mb-4 max-w-3xl text-sm text-soft">
      Each dot is one of her measurements: what her gauge does not explain, beside the same of every other tester,
      whatever her size. Beyond the band lies one in twenty by chance, beyond the dashed lines one in a hundred; those
      are named by their letters. A size that is itself off shows here too, so look at the gaps before you ask a tester
      to measure again.
    </p>
  );
}

interface RowProps {
  readonly row: TesterRow;
  readonly limits: Limits | null;
  readonly reach: number;
}

function Row({ row, limits, reach }: RowProps) {
  const { tester, name, size, comparisons } = row;
  const sentences = testerSentences(row);
  const compared = comparisons.flatMap(({ measurement, h, standing }) =>
    h === null ? [] : [{ key: measurement.id, label: measurement.letter, value: h, standing }],
  );
  return (
    <li
      id={`tester-${tester}`}
      className="grid scroll-mt-4 items-center gap-x-6 gap-y-1 border-b border-line px-4 py-2.5 last:border-b-0 target:bg-paper lg:grid-cols-[14rem_1fr_22rem]"
    >
      <h3 className="font-sans text-base font-semibold wrap-anywhere">
        {name} <span className="font-normal text-soft">{size}</span>
      </h3>
      <div className="min-w-0">
        {limits === null || compared.length === 0 ? null : (
          <DeviationStrip
            title={`${name}: ${compared.length} measurements beside the others’`}
            band={limits.unusual}
            limit={limits.rare}
            reach={reach}
            usual={compared.filter(({ standing }) => standing === "usual").map(({ value }) => value)}
            standing={compared
              .filter(({ standing }) => standing !== "usual")
              .map((dot) => ({ ...dot, isStrong: dot.standing === "rare" }))}
          />
        )}
      </div>
      <div className="numbers text-sm wrap-anywhere">
        {sentences.length === 0 ? <p className="text-soft">{noSentence(row)}</p> : null}
        {sentences.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
    </li>
  );
}
