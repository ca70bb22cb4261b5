import Link from "next/link";
import { formatLength } from "@/ui/format-length";
import { Paging } from "@/ui/paging";
import { TABLE, TABLE_HEAD, TableFrame } from "@/ui/table-frame";
import type { BoardPerson } from "../board-people";
import { differenceWords, fitWord } from "../fit-copy";
import type { LoadedBoard } from "../loaders";
import { isDrawn } from "../placing-crowd";
import type { StoredSize } from "../stored-board";
import { changeOfPerson } from "./change-of-person";
import { PlacedRows, type PlacedWords } from "./person-rows";
import type { PlacesFrame } from "./places-frame";

interface PlacingTableProps {
  readonly loaded: LoadedBoard;
  readonly frame: PlacesFrame;
}

/** Who has which size, a part per size. */
export function PlacingTable({ loaded, frame }: PlacingTableProps) {
  const { board, shown, people } = loaded;
  const changed = people.find(frame.query.change ?? "");
  const isListed = ({ id }: StoredSize) => shown.listed.has(id) || changed?.size === id;
  return (
    <TableFrame label="Sizes and testers">
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
            <th scope="col">Preference</th>
            <th scope="col">Why this size</th>
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
  /** Whose size is being changed. */
  readonly changed: BoardPerson | null;
}

/** The people of a size, a page at a time, and who is being changed there. */
function SizePeople({ size: { id, label }, loaded, frame, changed }: SizePeopleProps) {
  const { page, pages, from, many } = loaded.shown.listed.get(id) ?? { page: 1, pages: 1, from: 0, many: 0 };
  const onPage = loaded.people.among(from, many);
  const isBeside = changed !== null && changed.size === id && !onPage.includes(changed);
  return (
    <>
      <PlacedRows
        rows={[...onPage, ...(isBeside ? [changed] : [])].map((person) => placedWords(person, frame))}
        measurements={frame.measurements.length}
        {...changeOfPerson(changed, frame)}
      />
      {pages > 1 ? (
        <tr>
          <td colSpan={frame.measurements.length + 4}>
            <Paging
              label={`Pages of testers in ${label}`}
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
  const { label, placed, wanted, least, most, invited, over, missing } = size;
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
            {least > 0 ? `; at least ${least}, at most ${most}` : `; at most ${most}`}
          </span>
          {missing > 0 ? (
            <SizeProblem>
              {missing} {missing === 1 ? "tester" : "testers"} missing
            </SizeProblem>
          ) : null}
          {over > 0 ? (
            <SizeProblem>
              {over} too many: unlock or move {over === 1 ? "one" : over}, or allow more here
            </SizeProblem>
          ) : null}
          {isFolded && many > 0 ? (
            <Link
              href={frame.hrefWith({ in: isListed ? undefined : size.id, change: undefined, placed: undefined })}
              scroll={false}
              prefetch={false}
              className="ml-3 inline-flex min-h-9 items-center text-sm font-normal text-link"
            >
              {isListed ? "Hide" : many === 1 ? "Show who" : `Show all ${many}`}
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
    ({ bodyCm }, index) => `${(measurements[index] ?? "").toLowerCase()} ${formatLength(bodyCm, unit)}`,
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

function placedWords(
  { key, name, standing, applicant, fit, choice, why }: BoardPerson,
  frame: PlacesFrame,
): PlacedWords {
  return {
    ...{ id: key, name, standing, choice, why, mayChange: frame.mayAct && applicant !== null },
    fit:
      fit === null
        ? null
        : {
            differences: fit.differences.map((difference) => [
              differenceWords(difference, frame.unit),
              difference.beyondCm > 0,
            ]),
            word: fitWord(fit.bodyMisfit, frame.measurements.length),
            misfit: fit.misfit.toFixed(2),
          },
  };
}
