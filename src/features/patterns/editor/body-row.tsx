"use client";

import { memo } from "react";
import { ownValue } from "@/engine/pattern";
import { formatChangeNumber } from "@/ui/format-length";
import { TABLE_ROW } from "@/ui/table-frame";
import { bodyRows, stepCm, withBodyRows, withBodyText, type BodyRow as Body } from "./body-rows";
import { useEditing, useEditingValue } from "./editing";
import { NumberField, TextField } from "./fields";
import { ItemButtons } from "./item-buttons";
import { moveItem, replaceItem } from "./list-items";

interface BodyRowProps {
  readonly body: Body;
  readonly row: number;
  readonly isLast: boolean;
  readonly onRemove: () => void;
}

/** One body measurement through the sizes, and the step from each size to the next. */
export function BodyRow({ body, row, isLast, onRemove }: BodyRowProps) {
  const { pattern, change } = useEditing("pattern", "change");
  const move = (by: -1 | 1) => change((now) => withBodyRows(now, moveItem(bodyRows(now), row, by)), null);
  return (
    <tr className={`${TABLE_ROW} align-top`}>
      <BodyHead body={body} row={row} />
      {pattern.sizes.map(({ id }, index) => (
        <BodyCell key={id} body={body.id} label={body.label} row={row} i={index} />
      ))}
      <td className="w-full">
        <ItemButtons
          name={body.label || `body measurement ${row + 1}`}
          onUp={row === 0 ? undefined : () => move(-1)}
          onDown={isLast ? undefined : () => move(1)}
          onRemove={onRemove}
        />
      </td>
    </tr>
  );
}

function BodyHead({ body, row }: Pick<BodyRowProps, "body" | "row">) {
  const { pattern, change } = useEditing("pattern", "change");
  const set = (next: Body, field: string) =>
    change((now) => withBodyRows(now, replaceItem(bodyRows(now), row, next)), `bodyMeasurements.${row}.${field}`);
  const name = body.label || `body measurement ${row + 1}`;
  return (
    <th scope="row" className="sticky left-0 z-1 w-60 min-w-60 bg-sheet font-normal max-sm:w-40 max-sm:min-w-40">
      <TextField
        at={["bodyMeasurements", row, "label"]}
        label={`Body measurement ${row + 1}`}
        labelled="aloud"
        className="w-full font-semibold"
        value={body.label}
        onText={(label) => set({ ...body, label }, "label")}
      />
      <label className="flex min-h-8 items-center gap-2 text-sm">
        <input
          type="radio"
          name="size-by"
          aria-label={`${name} orders the sizes`}
          className="size-5 accent-thread"
          checked={pattern.sizeBy === body.id}
          onChange={() => change((now) => ({ ...now, sizeBy: body.id }), null)}
        />
        orders the sizes
      </label>
      <details>
        <summary className="min-h-7 text-sm text-soft">
          How to take it{body.how.trim() === "" ? ": not described yet" : ""}
        </summary>
        <TextField
          at={["bodyMeasurements", row, "how"]}
          label={`How to take ${name}`}
          labelled="aloud"
          lines={4}
          className="w-full text-sm"
          value={body.how}
          onText={(how) => set({ ...body, how }, "how")}
        />
      </details>
    </th>
  );
}

interface BodyCellProps {
  readonly body: string;
  readonly label: string;
  readonly row: number;
  /** Index of the size. */
  readonly i: number;
}

const BodyCell = memo(function BodyCell({ body, label, row, i }: BodyCellProps) {
  const { value, size, before, step, unit, change } = useEditingValue(({ pattern, unit, change }) => ({
    value: ownValue(pattern.sizes[i]?.body, body),
    size: pattern.sizes[i]?.label,
    before: pattern.sizes[i - 1]?.label,
    step: stepCm(pattern, { i, body, unit }),
    unit,
    change,
  }));
  return (
    <td data-row={row} data-column={i} className="w-26 px-1! has-[[aria-invalid=true]]:min-w-44">
      <NumberField
        at={["sizes", i, "body", body]}
        label={`${label}, ${size ?? ""}`}
        labelled="aloud"
        kind="length"
        className="w-full"
        value={value}
        onText={(text) => change((now) => withBodyText(now, { i, body, text }), `sizes.${i}.body.${body}`)}
      />
      {step === undefined ? null : (
        <span className="block pr-2 text-right text-sm text-soft">
          {formatChangeNumber(step, unit)}
          <span className="sr-only"> to {before}</span>
        </span>
      )}
    </td>
  );
});
