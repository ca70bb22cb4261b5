import { DeviationStripScale, placeDeviations, type DeviationScale } from "@/ui/deviation-scale";
import type { TesterBoard, TesterRow } from "./habits-board";
import { noSentence, testerSentences } from "./habits-copy";
import { TesterRows, type DrawnTester } from "./tester-rows";

/** A row per tester: what stands out, and their measurements as dots compared with the others'. */
export function TesterConsistency({ board }: { readonly board: TesterBoard }) {
  const { rows, limits, reach } = board;
  const scale = limits === null ? null : { reach, band: limits.unusual, limit: limits.rare };
  return (
    <>
      {scale === null ? null : <Legend />}
      <div className="rounded-sheet border border-line bg-sheet shadow-sheet">
        {scale === null ? null : (
          <>
            <DeviationStripScale {...scale} />
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
          </>
        )}
        <TesterRows testers={rows.map((row) => drawn(row, scale))} />
      </div>
    </>
  );
}

function Legend() {
  return (
    <p className="mb-4 max-w-3xl text-sm text-soft">
      Each dot is one of a tester’s measurements after their gauge is taken out, compared with every other tester’s,
      whatever their size. By chance, one in twenty falls outside the band and one in a hundred outside the dashed
      lines; those have their letter beside them. A size that is itself different from the pattern shows here too, so
      look at the differences before you ask a tester to measure again.
    </p>
  );
}

function drawn(row: TesterRow, scale: DeviationScale | null): DrawnTester {
  const { tester, name, size, comparisons } = row;
  const sentences = testerSentences(row);
  return {
    ...{ tester, name, size, sentences },
    strip: scale === null ? null : stripOf(name, comparisons, scale),
    otherwise: sentences.length === 0 ? noSentence(row) : null,
  };
}

function stripOf(name: string, comparisons: TesterRow["comparisons"], scale: DeviationScale): DrawnTester["strip"] {
  const compared = comparisons.flatMap(({ measurement, h, standing }) =>
    h === null
      ? []
      : [{ label: measurement.letter, value: h, isUsual: standing === "usual", isStrong: standing === "rare" }],
  );
  if (compared.length === 0) return null;
  const usual = compared.filter(({ isUsual }) => isUsual).map(({ value }) => value);
  const standing = compared.filter(({ isUsual }) => !isUsual);
  return {
    title: `${name}: ${compared.length} measurements compared with the others’`,
    ...placeDeviations(usual, standing, scale),
  };
}
