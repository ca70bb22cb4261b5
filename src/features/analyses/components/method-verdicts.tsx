import type { Cell } from "@/engine/gaps";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { verdictTally } from "../method-numbers";
import type { CellState } from "../verdict-words";

const ROWS: readonly { readonly state: CellState; readonly says: string; readonly means: string }[] = [
  { state: "holds", says: "on size", means: "The chance that the true gap lies within one tolerance is 90 % or more." },
  { state: "off", says: "2 cm too big", means: "The chance that it lies beyond one tolerance is 90 % or more." },
  {
    state: "leaning",
    says: "probably too big",
    means: "The estimate lies beyond one tolerance, but the chance of it is less than that.",
  },
  {
    state: "unsettled",
    says: "can’t tell yet",
    means:
      "The estimate lies within, but the chance of it is less than that. How many more testers would settle it is said where nine or fewer would.",
  },
  {
    state: "none",
    says: "no report yet",
    means: "Nobody measured it in this size. What other sizes and measurements suggest is shown, without a verdict.",
  },
];

/** What each verdict means as a chance, and how often it was passed here. */
export function MethodVerdicts({ cells }: { readonly cells: readonly Cell[] }) {
  const tally = verdictTally(cells);
  return (
    <>
      <p className="mb-4 text-soft">
        A gap is never known exactly, so each is a spread of possible values. The line on its ruler holds 90 % of them,
        and the verdict goes by how much of the spread lies beyond the measurement’s tolerance.
      </p>
      <div className="max-w-4xl">
        <TableFrame label="Verdicts">
          <table className={TABLE}>
            <thead className={TABLE_HEAD}>
              <tr>
                <th scope="col">Verdict</th>
                <th scope="col">What it means</th>
                <th scope="col" className="text-right">
                  In this call
                </th>
              </tr>
            </thead>
            <tbody>
              {ROWS.map(({ state, says, means }) => (
                <tr key={state} className={`${TABLE_ROW} align-top`}>
                  <th scope="row" className="md:min-w-32">
                    {says}
                  </th>
                  <td className="md:min-w-56 text-soft">{means}</td>
                  <td className="text-right">{tally[state]}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </TableFrame>
      </div>
    </>
  );
}
