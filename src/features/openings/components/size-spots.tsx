import { own } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { formatLengthNumber } from "@/ui/format-length";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { askableMeasurements } from "../field-names";
import type { ToldCall } from "../loaders";

/** Every size with the body that it is made for and its tester spots, a size a row, so that one finds one's own. */
export function SizeSpots({ told, unit }: { readonly told: ToldCall; readonly unit: LengthUnit }) {
  const { pattern, places, document } = told;
  const askable = askableMeasurements(pattern);
  const shown = askable.filter(({ id }) => document.bodyAsked.includes(id) || id === pattern.sizeBy);
  return (
    <div className="max-w-3xl">
      <TableFrame label="Sizes and tester spots">
        <table className={`${TABLE} max-sm:[&_td]:px-2 max-sm:[&_th]:px-2`}>
          <thead className={TABLE_HEAD}>
            <tr className="align-bottom">
              <th scope="col">Size</th>
              {shown.map(({ id, label }) => (
                <th key={id} scope="col" className="text-right wrap-anywhere">
                  {label}, {unit}
                  {document.fitBy.includes(id) ? <span className="block font-normal">decides the size</span> : null}
                </th>
              ))}
              <th scope="col" className="text-right">
                Tester spots
              </th>
            </tr>
          </thead>
          <tbody>
            {pattern.sizes.map(({ id: size, label, body }) => (
              <tr key={size} className={TABLE_ROW}>
                <th scope="row" className="max-w-40 font-serif text-lg wrap-anywhere">
                  {label}
                </th>
                {shown.map(({ id }) => {
                  const cm = own(body, id);
                  return (
                    <td key={id} className="text-right">
                      {cm === undefined ? <span className="text-soft">none</span> : formatLengthNumber(cm, unit)}
                    </td>
                  );
                })}
                <td className="text-right">{own(places, size)?.wanted ?? 0}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
      <p className="mt-2 text-sm text-soft">The body that each size is made for, not the garment.</p>
    </div>
  );
}
