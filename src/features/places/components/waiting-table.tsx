import Link from "next/link";
import { own } from "@/engine/pattern";
import { formatLength } from "@/ui/format-length";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import type { BoardPerson } from "../placing-board";
import { PersonChange, PersonName, type PlacesFrame } from "./placing-table";

interface WaitingTableProps {
  readonly people: readonly BoardPerson[];
  /** Ids of the measurements, in the order of the frame's labels. */
  readonly measurementIds: readonly string[];
  readonly frame: PlacesFrame;
}

/** Of more, the first are listed until all are asked for. */
const MOST_LISTED = 20;

/** Who stands in no size, with her body and why. */
export function WaitingTable({ people, measurementIds, frame }: WaitingTableProps) {
  const isAll = frame.query.waiting === "all" || people.length <= MOST_LISTED + 1;
  const listed = isAll ? people : people.filter(({ key }, at) => at < MOST_LISTED || key === frame.query.change);
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
      {people.length > MOST_LISTED + 1 ? (
        <Link
          href={frame.hrefWith({ waiting: isAll ? undefined : "all", change: undefined })}
          scroll={false}
          prefetch={false}
          className="mt-2 inline-flex min-h-11 items-center text-link"
        >
          {isAll ? `Show the first ${MOST_LISTED}` : `Show all ${people.length} who are waiting`}
        </Link>
      ) : null}
    </>
  );
}

function lengthOrDash(cm: number | undefined, unit: PlacesFrame["unit"]): string {
  return cm === undefined ? "–" : formatLength(cm, unit);
}
