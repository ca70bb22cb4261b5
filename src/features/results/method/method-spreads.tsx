import type { LengthUnit } from "@/engine/units";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import type { Results } from "../loaders";
import type { PageParts } from "../schema";
import { spreads } from "./spreads";

interface MethodSpreadsProps {
  readonly results: Results<PageParts<"method">>;
  readonly unit: LengthUnit;
}

/** The six spreads estimated from the call's own readings. */
export function MethodSpreads({ results, unit }: MethodSpreadsProps) {
  const { pattern, differences, method } = results;
  const named = differences.causes.length > 0;
  return (
    <>
      <p className="mb-4 text-soft">
        Whether a difference comes from the pattern, the fabric or the tape depends on how much each usually
        contributes. These six spreads (standard deviations: about two in three values are within one, either way) are
        estimated from this test’s own measurements by penalised maximum likelihood: the values that make the
        measurements most likely, pulled a little toward usual values, because a few testers alone would make the
        results look more certain than they are.
        {named ? " The first three exclude what the likely causes explain." : ""}
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
        All but the drifts scale with the tolerance: the smaller number is for the pattern’s smallest tolerance, the
        larger for its largest. A drift of 2 % is 2 cm on a bust of one metre. It changes all widths of a garment
        together, which is how it differs from a wrong size.
      </p>
    </>
  );
}
