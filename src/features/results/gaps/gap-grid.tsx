"use client";

import type { ReactNode } from "react";
import { IntervalRuler, IntervalRulerScale } from "@/ui/interval-ruler";
import { cellKey, openCell } from "./gap-address";
import type { GridCell, GridContent, GridRow, GridSize } from "./grid-content";
import { MARKS } from "../components/ruler-marks";
import { CauseMark } from "./cause-mark";
import { GridKeys } from "./grid-keys";

interface GapGridProps {
  readonly content: GridContent;
  readonly opened: string | undefined;
  /** The page's query apart from the open cell. */
  readonly search: string;
  /** The open cell's content. */
  readonly panel: ReactNode;
}

/** Up to this many sizes fit side by side on a desktop screen; more scroll in a frame with sticky headings. */
const MOST_WITHOUT_SCROLLING = 10;

/**
 * Measurements down, sizes across; on a phone one measurement after another with a line per size. Drawn from plain numbers, because a large grid of elements would be sent twice.
 */
export function GapGrid({ content: { sizes, rows, reach }, opened, search, panel }: GapGridProps) {
  const wide = sizes.length > MOST_WITHOUT_SCROLLING;
  return (
    <GridKeys opened={opened}>
      <IntervalRulerScale reach={reach} />
      <div
        className={`relative rounded-sheet border border-line bg-sheet shadow-sheet ${wide ? "md:max-h-[85vh] md:overflow-auto" : "max-lg:md:overflow-x-auto"}`}
      >
        <table
          role="grid"
          aria-label="Differences by measurement and size"
          className="gap-grid numbers"
          style={{ minWidth: wide ? `${sizes.length * 7.5 + 11}rem` : "min(100%, 62rem)" }}
        >
          <thead role="rowgroup">
            <tr role="row">
              <th role="columnheader" scope="col">
                Measurement
              </th>
              {sizes.map(({ id, label, testers, mark }) => (
                <th key={id} role="columnheader" scope="col">
                  <b>{label}</b>
                  <small>{testersWords(testers)}</small>
                  {mark === undefined ? null : <em>{mark}</em>}
                </th>
              ))}
            </tr>
          </thead>
          {rows.map((row) => (
            <Row key={row.id} {...{ row, sizes, opened, search, panel }} />
          ))}
        </table>
      </div>
    </GridKeys>
  );
}

function testersWords(testers: number): string {
  if (testers === 0) return "no testers";
  return `${testers} ${testers === 1 ? "tester" : "testers"}`;
}

interface RowProps extends Omit<GapGridProps, "content"> {
  readonly row: GridRow;
  readonly sizes: readonly GridSize[];
}

function Row({ row: { id, letter, label, tolerance, cells }, sizes, opened, search, panel }: RowProps) {
  const openedAt = sizes.findIndex((size) => cellKey(size.id, id) === opened);
  return (
    <tbody role="rowgroup">
      <tr role="row">
        <th role="rowheader" scope="row">
          <b title={label}>
            <i>{letter}</i>
            {label}
          </b>
          <small>± {tolerance}</small>
        </th>
        {cells.map((cell, index) => {
          const size = sizes[index];
          if (size === undefined) return null;
          return (
            <Cell
              key={size.id}
              {...{ cell, search }}
              cellId={cellKey(size.id, id)}
              size={size.label}
              measurement={label}
              isOpened={index === openedAt}
              order={openedAt === -1 ? undefined : 2 * index}
            />
          );
        })}
      </tr>
      {openedAt === -1 ? null : (
        <tr role="row">
          <td role="gridcell" colSpan={cells.length + 1} style={{ order: 2 * openedAt + 1 }} className="panel">
            {panel}
          </td>
        </tr>
      )}
    </tbody>
  );
}

interface CellProps {
  readonly cell: GridCell;
  readonly cellId: string;
  readonly size: string;
  readonly measurement: string;
  readonly search: string;
  readonly isOpened: boolean;
  /** Its order in the row when a panel opens between the cells on a phone. */
  readonly order: number | undefined;
}

/** One cell: its ruler, its verdict, and a link to its testers. */
function Cell({ cell, cellId, size, measurement, search, isOpened, order }: CellProps) {
  const { state, words, estimate, causes = [], isOther = false, isCarried = false } = cell;
  return (
    <td
      role="gridcell"
      id={`at-${cellId}`}
      className={state}
      data-opened={isOpened || undefined}
      data-other={isOther || undefined}
      style={order === undefined ? undefined : { order }}
    >
      <a href={openCell(search, cellId)} data-cell={cellId} aria-expanded={isOpened}>
        <span className="sr-only">{`${measurement}, ${size}: `}</span>
        <b aria-hidden="true">{size}</b>
        <IntervalRuler mark={isCarried ? "hollow" : MARKS[state]} estimate={estimate} />
        <span>
          {linesOf(words).map((line) => (
            <i key={line}>{`${line} `}</i>
          ))}
          {causes.map((cause) => (
            <CauseMark key={cause} number={cause} />
          ))}
        </span>
      </a>
    </td>
  );
}

/** The part of a verdict after its colon gets a line of its own, and so does the side after a difference. */
function linesOf(words: string): string[] {
  return words.split(/(?<=:) |(?<=^\d.*) (?=too )/);
}
