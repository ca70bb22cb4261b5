import type { PatternChange } from "@/engine/editing";
import type { LengthUnit } from "@/engine/units";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { changeSide } from "../pattern-copy";

/** The changes: what, in which size, and both numbers. */
export function ChangeList({
  changes,
  unit,
}: {
  readonly changes: readonly PatternChange[];
  readonly unit: LengthUnit;
}) {
  if (changes.length === 0) return <p className="text-soft">No numbers changed.</p>;
  return (
    <TableFrame label="Changes">
      <table className={TABLE}>
        <thead className={TABLE_HEAD}>
          <tr>
            <th scope="col">What</th>
            <th scope="col">Size</th>
            <th scope="col">Before</th>
            <th scope="col">After</th>
          </tr>
        </thead>
        <tbody>
          {changes.map((change) => (
            <tr key={change.path} className={TABLE_ROW}>
              <th scope="row" className="min-w-36 font-normal wrap-anywhere">
                {change.what}
              </th>
              <td>{change.size ?? "all"}</td>
              {change.was === null && change.becomes === null ? (
                <td colSpan={2} className="text-soft">
                  rewritten
                </td>
              ) : (
                <>
                  <td className="text-soft">{changeSide(change, change.was, unit)}</td>
                  <td className="font-semibold">{changeSide(change, change.becomes, unit)}</td>
                </>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
