import type { LengthUnit } from "@/engine/units";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import type { Results } from "../loaders";
import type { PageParts } from "../schema";
import { spreads } from "../method-numbers";

interface MethodSpreadsProps {
  readonly results: Results<PageParts<"method">>;
  readonly unit: LengthUnit;
}

/** The six spreads that the call's own readings tell. */
export function MethodSpreads({ results, unit }: MethodSpreadsProps) {
  const { pattern, differences, method } = results;
  const named = differences.causes.length > 0;
  return (
    <>
      <p className="mb-4 text-soft">
        Who is to blame for a gap, the pattern, the fabric or the tape, is decided by how much each usually contributes.
        These six spreads (standard deviations: about two in three lie within one, either way) are estimated from this
        call’s own measurements by penalised maximum likelihood: the values under which the measurements are most
        likely, drawn a little toward what is usual, because a few testers alone would make it look surer than it is.
        {named ? " What the named causes explain is no longer in the first three." : ""}
      </p>
      <div className="max-w-4xl">
        <TableFrame label="Spreads">
          <table className={TABLE}>
            <thead className={TABLE_HEAD}>
              <tr>
                <th scope="col">Spread</th>
                <th scope="col">What it is</th>
                <th scope="col" className="text-right">
                  Here
                </th>
              </tr>
            </thead>
            <tbody>
              {spreads(method.variances, pattern, unit).map(({ key, name, meaning, words }) => (
                <tr key={key} className={`${TABLE_ROW} align-top`}>
                  <th scope="row" className="md:min-w-28">
                    {name}
                  </th>
                  <td className="md:min-w-52 text-soft">{meaning}</td>
                  <td className="text-right md:whitespace-nowrap">{words}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </TableFrame>
      </div>
      <p className="mt-3 text-sm text-soft">
        All but the drifts go with the tolerance: the smaller number is for the pattern’s closest tolerance, the larger
        for its widest. A drift of 2 % is 2 cm in a metre of bust, and moves all of a garment’s widths together, which
        is how it is told from a size that is wrong.
      </p>
    </>
  );
}
