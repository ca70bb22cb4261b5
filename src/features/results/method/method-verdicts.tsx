import type { Cell } from "@/engine/gaps";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { verdictTally } from "./spreads";
import type { CellState } from "../verdict-copy";

const ROWS: readonly { readonly state: CellState; readonly says: string; readonly means: string }[] = [
  {
    state: "holds",
    says: "as planned",
    means: "The chance that the true difference is within one tolerance is 90 % or more.",
  },
  { state: "off", says: "2 cm too wide", means: "The chance that it is beyond one tolerance is 90 % or more." },
  {
    state: "leaning",
    says: "probably too wide",
    means: "The estimate is beyond one tolerance, but the chance is less than 90 %.",
  },
  {
    state: "unsettled",
    says: "not enough data",
    means:
      "The estimate is within one tolerance, but the chance is less than 90 %. The number of further testers that would settle it in 4 cases of 5 is shown if it is nine or fewer.",
  },
  {
    state: "none",
    says: "no report yet",
    means: "Nobody has measured it in this size. What other sizes and measurements suggest is shown without a verdict.",
  },
];

/** What each verdict means as a chance, and how often it occurs here. */
export function MethodVerdicts({ cells }: { readonly cells: readonly Cell[] }) {
  const tally = verdictTally(cells);
  return (
    <>
      <p className="mb-4 text-soft">
        A difference is never known exactly, so each is a range of possible values. The line on its ruler covers 90 % of
        them. The verdict depends on how much of the range is beyond the measurement’s tolerance.
      </p>
      <div className="max-w-4xl">
        <TableFrame label="Verdicts">
          <table className={TABLE}>
            <thead className={TABLE_HEAD}>
              <tr>
                <th scope="col">Verdict</th>
                <th scope="col">What it means</th>
                <th scope="col" className="text-right">
                  In this test
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
