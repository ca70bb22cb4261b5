"use client";

import { useState } from "react";
import { TABLE, TABLE_HEAD, TableFrame } from "@/ui/table-frame";
import { BodyRow } from "./body-row";
import { withoutBody, withoutSizeAt, withPastedBodies, type BodyRow as Body } from "./body-rows";
import { useEditing } from "./editing";
import { GridArea } from "./grid-area";
import { SizeHead } from "./size-head";
import type { TakenOut } from "./taken-out";
import { usesOfBody } from "./uses";

interface SizeTableProps {
  readonly rows: readonly Body[];
  readonly onTakenOut: (item: TakenOut) => void;
}

/** Sizes across, body measurements down. */
export function SizeTable({ rows, onTakenOut }: SizeTableProps) {
  const { pattern, unit, change } = useEditing("pattern", "unit", "change");
  const [leftOver, setLeftOver] = useState(0);
  const paste = (block: readonly (readonly string[])[], row: number, column: number) => {
    const fits = block.slice(0, rows.length - row).flatMap((texts) => texts.slice(0, pattern.sizes.length - column));
    setLeftOver(block.flat().length - fits.length);
    change((now) => withPastedBodies(now, block, { row, column }), null);
  };
  const removeSize = (index: number, id: string, label: string) => {
    change((now) => withoutSizeAt(now, index), null);
    onTakenOut({ id, name: label, uses: [] });
  };
  const removeBody = ({ id, label }: Body) => {
    change((now) => withoutBody(now, id), null);
    onTakenOut({ id, name: label, uses: usesOfBody(pattern, id) });
  };
  return (
    <GridArea onBlock={paste}>
      <TableFrame label="Sizes and body measurements">
        <table className={TABLE}>
          <thead className={TABLE_HEAD}>
            <tr className="align-top">
              <th scope="col" className="sticky left-0 z-1 bg-sheet">
                Body measurement, {unit}
              </th>
              {pattern.sizes.map((size, i) => (
                <SizeHead key={size.id} size={size} index={i} onRemove={() => removeSize(i, size.id, size.label)} />
              ))}
              <td>
                <span className="sr-only">Move or remove</span>
              </td>
            </tr>
          </thead>
          <tbody>
            {rows.map((body, row) => (
              <BodyRow
                key={body.id}
                body={body}
                row={row}
                isLast={row === rows.length - 1}
                onRemove={() => removeBody(body)}
              />
            ))}
          </tbody>
        </table>
      </TableFrame>
      <p role="status" className="mt-2 text-sm empty:hidden">
        {leftOver === 0
          ? null
          : `▲ ${leftOver} pasted cells are outside the table and were ignored. Add the sizes or body measurements first, then paste again.`}
      </p>
    </GridArea>
  );
}
