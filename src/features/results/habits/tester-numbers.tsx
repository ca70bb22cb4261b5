import { MatrixTable } from "@/ui/matrix-table";
import type { Standing, TesterBoard } from "./habits-board";

const SIGNS: Readonly<Record<Standing, string>> = { usual: "", unusual: " *", rare: " **" };

/** The same as numbers: drifts in per cent, and how far each measurement is from the others'. */
export function TesterNumbers({ board }: { readonly board: TesterBoard }) {
  const { rows, measurements } = board;
  return (
    <>
      <p className="mb-4 max-w-3xl text-sm text-soft">
        First, how many per cent wider (+) or narrower (−), longer (+) or shorter (−) the garment’s fabric is than the
        tester’s swatch. Then, for each measurement, how much larger (+) or smaller (−) it is than the others’; 1 is the
        usual difference between testers. * happens by chance once in twenty, ** once in a hundred.
      </p>
      <MatrixTable
        label="Measuring habits as numbers"
        corner="Tester, size"
        columns={[
          { key: "across", label: "Wider, %" },
          { key: "along", label: "Longer, %" },
          ...measurements.map(({ id, letter, label }) => ({ key: `m ${id}`, label: `${letter} ${label}` })),
        ]}
        rows={rows.map(({ tester, name, size, driftAcross, driftAlong, comparisons }) => ({
          key: tester,
          head: (
            <>
              {name} <span className="text-soft">{size}</span>
            </>
          ),
          cells: [
            driftAcross === null ? "" : signed(driftAcross * 100, 1),
            driftAlong === null ? "" : signed(driftAlong * 100, 1),
            ...comparisons.map(({ measurement, h, standing }) => (
              <span key={measurement.id} className={standing === "usual" ? "" : "font-semibold whitespace-nowrap"}>
                {h === null ? "" : `${signed(h, 2)}${SIGNS[standing]}`}
              </span>
            )),
          ],
        }))}
      />
    </>
  );
}

function signed(value: number, digits: number): string {
  const text = Math.abs(value).toFixed(digits);
  if (Number(text) === 0) return text;
  return `${value > 0 ? "+" : "−"}${text}`;
}
