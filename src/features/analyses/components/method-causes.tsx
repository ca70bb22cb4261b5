import type { LengthUnit } from "@/engine/units";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { causeSentence } from "../cause-words";
import type { Results } from "../loaders";
import type { PageParts } from "../schema";

interface MethodCausesProps {
  readonly results: Results<PageParts<"method">>;
  readonly unit: LengthUnit;
}

/** How the inputs of the pattern are tried as causes, and the evidence of those that were named. */
export function MethodCauses({ results, unit }: MethodCausesProps) {
  const { causes } = results.differences;
  return (
    <>
      <p className="mb-3 text-soft">
        Each input of the pattern, an allowance, a count in one size, how a fabric settles, moves its own measurements
        in its own proportion. {results.method.candidates} such inputs were tried on this call. For each, the spreads
        are estimated anew with that input free to be wrong, and its <em>evidence</em> is how much likelier the
        measurements become: the difference of the log marginal likelihoods, less a price for how many inputs of its
        kind were tried, since among many one wins by luck. An evidence of 1 makes them 2.7 times as likely, one of 5
        about 150 times.
      </p>
      <p className="mb-4 text-soft">
        The best is named while it pays, three at most. Those that come within 2 of its evidence are told as nearly as
        likely, and those that move the same measurements in the same proportion as the same answer: no report can tell
        them apart. The gaps themselves are averaged over all that was tried, each by its evidence.
      </p>
      {causes.length === 0 ? (
        <p>On this call no cause pays.</p>
      ) : (
        <div className="max-w-4xl">
          <TableFrame label="Causes that are named">
            <table className={TABLE}>
              <thead className={TABLE_HEAD}>
                <tr>
                  <th scope="col">Cause</th>
                  <th scope="col" className="text-right">
                    Evidence
                  </th>
                  <th scope="col" className="text-right">
                    Explains
                  </th>
                </tr>
              </thead>
              <tbody>
                {causes.map((cause) => (
                  <tr key={`${cause.kind} ${cause.id} ${cause.size ?? ""}`} className={`${TABLE_ROW} align-top`}>
                    <th scope="row" className="md:min-w-52 font-normal wrap-anywhere">
                      {causeSentence(cause, results.pattern, unit)}
                    </th>
                    <td className="text-right">{cause.evidence.toFixed(1)}</td>
                    <td className="text-right">{Math.round(cause.explains * 100)} %</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </TableFrame>
        </div>
      )}
    </>
  );
}
