import { ownValue } from "@/engine/pattern";
import { formatLength } from "@/ui/format-length";
import { Paging } from "@/ui/paging";
import { TABLE, TABLE_HEAD, TableFrame } from "@/ui/table-frame";
import type { LoadedBoard } from "../loaders";
import { changeOfPerson } from "./change-of-person";
import { WaitingRows } from "./person-rows";
import type { PlacesFrame } from "./places-frame";

interface WaitingTableProps {
  readonly loaded: LoadedBoard;
  readonly frame: PlacesFrame;
}

/** Who has no size, with their measurements and why. */
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
            <WaitingRows
              rows={listed.map(({ key, name, standing, body, why, applicant }) => ({
                ...{ id: key, name, standing, why, mayChange: frame.mayAct && applicant !== null },
                lengths: board.fitBy.map((id) => lengthOrDash(ownValue(body, id), frame.unit)),
              }))}
              {...changeOfPerson(changed, frame)}
            />
          </tbody>
        </table>
      </TableFrame>
      <Paging
        label="Pages of waiting applicants"
        {...{ page, pages }}
        hrefOf={(waiting) => frame.hrefWith({ waiting, change: undefined })}
      />
    </>
  );
}

function lengthOrDash(cm: number | undefined, unit: PlacesFrame["unit"]): string {
  return cm === undefined ? "–" : formatLength(cm, unit);
}
