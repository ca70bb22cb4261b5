import type { LengthUnit } from "@/engine/units";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { causeSentence } from "../cause-copy";
import type { Results } from "../loaders";
import type { PageParts } from "../schema";

interface MethodCausesProps {
  readonly results: Results<PageParts<"method">>;
  readonly unit: LengthUnit;
}

/** How the pattern's inputs are tried as causes, and the evidence for those that are named. */
export function MethodCauses({ results, unit }: MethodCausesProps) {
  const { causes } = results.differences;
  return (
    <>
      <p className="mb-3 text-soft">
        Each input of the pattern (an edging, a count in one size, how a fabric changes from swatch to garment) affects
        its own measurements in its own proportion. {results.method.candidates} such inputs were tried for this test.
        For each, the spreads are estimated again with that input allowed to be wrong, and its <em>evidence</em> is how
        much likelier the measurements become: the difference of the log marginal likelihoods, less a penalty for how
        many inputs of its kind were tried, because among many one wins by luck. An evidence of 1 makes them 2.7 times
        as likely, one of 5 about 150 times.
      </p>
      <p className="mb-4 text-soft">
        Causes are named, best first, while the evidence is strong enough, three at most. Inputs within 2 of a cause’s
        evidence are listed as nearly as likely. Inputs that affect the same measurements in the same proportion are
        listed as equally likely: no report can tell them apart. The differences themselves are averaged over everything
        tried, weighted by evidence.
      </p>
      {causes.length === 0 ? (
        <p>No cause has enough evidence in this test.</p>
      ) : (
        <div className="max-w-4xl">
          <TableFrame label="Likely causes">
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
