import { own } from "@/engine/pattern";
import { formatLength } from "@/ui/format-length";
import { Paging } from "@/ui/paging";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import type { LoadedBoard } from "../loaders";
import { PersonChange, PersonName, type PlacesFrame } from "./placing-table";

interface WaitingTableProps {
  readonly loaded: LoadedBoard;
  readonly frame: PlacesFrame;
}

/** Who stands in no size, with her body and why. */
export function WaitingTable({ loaded, frame }: WaitingTableProps) {
  const { board, shown, people } = loaded;
  const { page, pages, from, many } = shown.waiting;
  const changed = people.find(frame.query.change ?? "");
  const onPage = people.among(from, many);
  const isBeside = changed !== null && changed.size === null && !onPage.includes(changed);
  const listed = isBeside ? [...onPage, changed] : onPage;
  return (
    <>
      <TableFrame label="Who is waiting">
        <table className={`${TABLE} [&_td]:align-top`}>
          <thead className={TABLE_HEAD}>
            <tr>
              <th scope="col">Name</th>
              {frame.measurements.map((label) => (
                <th key={label} scope="col">
                  {label}
                </th>
              ))}
              <th scope="col">Why</th>
            </tr>
          </thead>
          <tbody>
            {listed.map((person) => (
              <tr key={person.key} className={TABLE_ROW}>
                <th scope="row" className="w-52 min-w-36 font-normal align-top">
                  <PersonName name={person.name} standing={person.standing} />
                  <PersonChange {...{ person, frame }} />
                </th>
                {board.fitBy.map((id) => (
                  <td key={id} className="min-w-24 whitespace-nowrap">
                    {lengthOrDash(own(person.body, id), frame.unit)}
                  </td>
                ))}
                <td className="min-w-64">{person.why}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
      <Paging
        label="Pages of those who are waiting"
        {...{ page, pages }}
        hrefOf={(waiting) => frame.hrefWith({ waiting, change: undefined })}
      />
    </>
  );
}

function lengthOrDash(cm: number | undefined, unit: PlacesFrame["unit"]): string {
  return cm === undefined ? "–" : formatLength(cm, unit);
}
