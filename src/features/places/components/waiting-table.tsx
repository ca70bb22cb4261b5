import { own } from "@/engine/pattern";
import { formatLength } from "@/ui/format-length";
import { pageOfList } from "@/ui/page-number";
import { Paging } from "@/ui/paging";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import type { BoardPerson } from "../placing-board";
import { PersonChange, PersonName, type PlacesFrame } from "./placing-table";

interface WaitingTableProps {
  readonly people: readonly BoardPerson[];
  /** Ids of the measurements, in the order of the frame's labels. */
  readonly measurementIds: readonly string[];
  readonly frame: PlacesFrame;
}

const LISTED = 12;

/** Who stands in no size, with her body and why. */
export function WaitingTable({ people, measurementIds, frame }: WaitingTableProps) {
  const { page, pages, skip, take } = pageOfList(frame.query.waiting ?? 1, people.length, LISTED);
  const listed = people.filter(
    ({ key }, index) => (index >= skip && index < skip + take) || key === frame.query.change,
  );
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
                {measurementIds.map((id) => (
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
