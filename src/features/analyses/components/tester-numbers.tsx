import { MatrixTable } from "@/ui/matrix-table";
import type { Standing, TesterBoard } from "../tester-board";

const SIGNS: Readonly<Record<Standing, string>> = { usual: "", unusual: " *", rare: " **" };

/** The same as numbers: drifts in per cent, and how far each measurement lies from the others'. */
export function TesterNumbers({ board }: { readonly board: TesterBoard }) {
  const { rows, measurements } = board;
  return (
    <>
      <p className="mb-4 max-w-3xl text-sm text-soft">
        By how many per cent her fabric came out wider (+) or narrower (−), longer (+) or shorter (−) than her swatch.
        Then, by measurement, how far hers lies from the others’, larger (+) or smaller (−); 1 is as far as they usually
        differ. * is passed by one in twenty by chance, ** by one in a hundred.
      </p>
      <MatrixTable
        label="Testers’ consistency as numbers"
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
