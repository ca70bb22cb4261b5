import Link from "next/link";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import { Paging } from "@/ui/paging";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import type { BoardPerson } from "../board-people";
import type { LoadedBoard } from "../loaders";
import { isDrawn } from "../placing-crowd";
import type { PlacesQuery } from "../schema";
import type { StoredSize } from "../stored-placing";
import { ChangePlace } from "./change-place";
import { FitCells } from "./fit-cells";
import { PersonShape } from "./person-shape";
import { STANDING_MARKS, STANDING_WORDS } from "./standing-words";

export interface PlacesFrame {
  readonly callId: string;
  /** She may change places, and the call is open. */
  readonly mayAct: boolean;
  readonly unit: LengthUnit;
  /** Labels of the body measurements that decide the fit. */
  readonly measurements: readonly string[];
  readonly sizeChoices: readonly { readonly id: string; readonly label: string }[];
  readonly query: PlacesQuery;
  /** This page's address where something else of it is asked for. */
  readonly hrefWith: (change: PlacesQuery) => string;
}

interface PlacingTableProps {
  readonly loaded: LoadedBoard;
  readonly frame: PlacesFrame;
}

/** Who stands in which size, a part a size. */
export function PlacingTable({ loaded, frame }: PlacingTableProps) {
  const { board, shown, people } = loaded;
  const changed = people.find(frame.query.change ?? "");
  const isListed = ({ id }: StoredSize) => shown.listed.has(id) || changed?.size === id;
  return (
    <TableFrame label="Who stands in which size">
      <table className={`${TABLE} [&_td]:align-top`}>
        <thead className={TABLE_HEAD}>
          <tr>
            <th scope="col">Name</th>
            {frame.measurements.map((label) => (
              <th key={label} scope="col">
                {label}
              </th>
            ))}
            <th scope="col">Fit</th>
            <th scope="col">Her wish</th>
            <th scope="col">Why here</th>
          </tr>
        </thead>
        {board.sizes.filter(isDrawn).map((size) => (
          <tbody key={size.id}>
            <SizeHead {...{ size, frame }} isFolded={shown.isFolded} isListed={isListed(size)} />
            {isListed(size) ? <SizePeople {...{ size, loaded, frame, changed }} /> : null}
          </tbody>
        ))}
      </table>
    </TableFrame>
  );
}

interface SizePeopleProps extends PlacingTableProps {
  readonly size: StoredSize;
  /** Whose place is being changed. */
  readonly changed: BoardPerson | null;
}

/** Those of a size, a page of them at a time; and who is being changed there. */
function SizePeople({ size: { id, label }, loaded, frame, changed }: SizePeopleProps) {
  const { page, pages, from, many } = loaded.shown.listed.get(id) ?? { page: 1, pages: 1, from: 0, many: 0 };
  const onPage = loaded.people.among(from, many);
  const isBeside = changed !== null && changed.size === id && !onPage.includes(changed);
  return (
    <>
      {[...onPage, ...(isBeside ? [changed] : [])].map((person) => (
        <PersonRow key={person.key} {...{ person, frame }} />
      ))}
      {pages > 1 ? (
        <tr>
          <td colSpan={frame.measurements.length + 4}>
            <Paging
              label={`Pages of those in ${label}`}
              {...{ page, pages }}
              hrefOf={(placed) => frame.hrefWith({ placed, change: undefined })}
            />
          </td>
        </tr>
      ) : null}
    </>
  );
}

interface SizeHeadProps {
  readonly size: StoredSize;
  readonly frame: PlacesFrame;
  /** One size is listed at a time. */
  readonly isFolded: boolean;
  readonly isListed: boolean;
}

function SizeHead({ size, frame, isFolded, isListed }: SizeHeadProps) {
  const { label, placed, wanted, least, invited, over, missing } = size;
  const many = invited + placed;
  return (
    <tr className="border-b border-line bg-paper">
      <th scope="rowgroup" colSpan={frame.measurements.length + 4}>
        <span className="sticky left-3 inline-block max-w-[calc(100vw-4rem)] wrap-anywhere">
          <span className="font-serif text-lg">{label}</span>{" "}
          <span className="ml-1 text-sm font-normal text-soft">
            {bodyOfSize(size, frame)}
            {many} of {wanted}
            {invited > 0 ? `, ${invited} of them invited` : ""}
            {least > 0 ? `; at least ${least}` : ""}
          </span>
          {missing > 0 ? <SizeProblem>{missing} short of the least</SizeProblem> : null}
          {over > 0 ? (
            <SizeProblem>
              {over} more than there are places: unlock or move {over === 1 ? "one" : over}, or want more testers here
            </SizeProblem>
          ) : null}
          {isFolded && many > 0 ? (
            <Link
              href={frame.hrefWith({ in: isListed ? undefined : size.id, change: undefined, placed: undefined })}
              scroll={false}
              prefetch={false}
              className="ml-3 inline-flex min-h-9 items-center text-sm font-normal text-link"
            >
              {isListed ? "Fold" : many === 1 ? "Show who" : `Show all ${many}`}
              <span className="sr-only"> in {label}</span>
            </Link>
          ) : null}
        </span>
      </th>
    </tr>
  );
}

/** `bust 86 cm, upper arm 28 cm · `. */
function bodyOfSize({ marks }: StoredSize, { measurements, unit }: PlacesFrame): string {
  const lengths = marks.map(
    ({ bodyCm }, at) => `${(measurements[at] ?? "").toLowerCase()} ${formatLength(bodyCm, unit)}`,
  );
  return lengths.length === 0 ? "" : `${lengths.join(", ")} · `;
}

function SizeProblem({ children }: { readonly children: React.ReactNode }) {
  return (
    <span className="ml-3 text-sm text-thread">
      <span aria-hidden="true">▲ </span>
      {children}
    </span>
  );
}

function PersonRow({ person, frame }: { readonly person: BoardPerson; readonly frame: PlacesFrame }) {
  const { name, standing, fit, choice, why } = person;
  return (
    <tr className={TABLE_ROW}>
      <th scope="row" className="w-52 min-w-36 font-normal align-top">
        <PersonName {...{ name, standing }} />
        <PersonChange {...{ person, frame }} />
      </th>
      <FitCells fit={fit} measurements={frame.measurements.length} unit={frame.unit} />
      <td className="min-w-28">{choice ?? "–"}</td>
      <td className="min-w-56">{why}</td>
    </tr>
  );
}

/** A name with the mark that stands for her on the ruler, and what the mark means. */
export function PersonName({ name, standing }: Pick<BoardPerson, "name" | "standing">) {
  return (
    <>
      <svg width="16" height="16" aria-hidden="true" className="mr-1.5 inline-block align-[-2px]">
        <svg x="8" y="8" overflow="visible">
          <PersonShape mark={STANDING_MARKS[standing]} r={5} />
        </svg>
      </svg>
      <bdi title={name} className="font-semibold wrap-anywhere">
        {shortened(name)}
      </bdi>
      <span className="block text-sm text-soft">{STANDING_WORDS[standing]}</span>
    </>
  );
}

/** Longer names would push everybody else out of sight. */
const MOST_LETTERS = 60;

function shortened(name: string): string {
  const letters = [...name];
  return letters.length > MOST_LETTERS ? `${letters.slice(0, MOST_LETTERS - 1).join("")}…` : name;
}

/** What can be settled about her by hand, where something can. */
export function PersonChange({ person, frame }: { readonly person: BoardPerson; readonly frame: PlacesFrame }) {
  const { applicant, name, size, standing } = person;
  if (!frame.mayAct || applicant === null) return null;
  if (frame.query.change !== applicant.applicationId)
    return (
      <Link
        href={frame.hrefWith({ change: applicant.applicationId })}
        scroll={false}
        prefetch={false}
        className="inline-flex min-h-9 items-center text-sm text-link"
      >
        Change …
        <span className="sr-only">
          {" "}
          where <bdi>{name}</bdi> stands
        </span>
      </Link>
    );
  return (
    <ChangePlace
      closeHref={frame.hrefWith({ change: undefined })}
      callId={frame.callId}
      applicationId={applicant.applicationId}
      name={name}
      sizes={frame.sizeChoices.filter(({ id }) => id !== size)}
      standing={
        standing === "locked" || standing === "placed" ? standing : applicant.isLeftWaiting ? "left waiting" : "waiting"
      }
    />
  );
}
