"use client";

import { formatPath, ownValue } from "@/engine/pattern";
import { TABLE, TABLE_HEAD, TableFrame } from "@/ui/table-frame";
import { CmField } from "./cm-field";
import { cmItems, withCm, withCmItems, withScope, type CmItem, type CmList } from "./cm-list";
import { useEditing } from "./editing";
import { ChoiceField, TextField } from "./fields";
import { ItemButtons } from "./item-buttons";
import { moveItem, replaceItem } from "./list-items";
import { MeasuredWhen } from "./measured-when";
import { usesWords } from "./uses";

interface CmRowProps {
  readonly list: CmList;
  readonly item: CmItem;
  readonly i: number;
  readonly isLast: boolean;
  readonly uses: readonly string[];
  readonly onRemove: () => void;
}

const SCOPES = [
  { value: "all", label: "the same in every size" },
  { value: "each", label: "different by size" },
];

/** One length, edging or seam: a number for all sizes, or one for each. */
export function CmRow({ list, item, i, isLast, uses, onRemove }: CmRowProps) {
  const { pattern, unit, change } = useEditing("pattern", "unit", "change");
  const length = list === "lengths" ? pattern.lengths?.[i] : undefined;
  const set = (next: (item: CmItem) => CmItem, field: string | null) =>
    change(
      (now) =>
        withCmItems(
          now,
          list,
          cmItems(now, list).map((each, index) => (index === i ? next(each) : each)),
        ),
      field && formatPath([list, i, field]),
    );
  const scope = (isBySize: boolean) =>
    change((now) => withCmItems(now, list, replaceItem(cmItems(now, list), i, withScope(now, item, isBySize))), null);
  const move = (by: -1 | 1) => change((now) => withCmItems(now, list, moveItem(cmItems(now, list), i, by)), null);
  const { cm } = item;
  return (
    <li className="rounded-sheet border border-line bg-sheet px-4 py-3 shadow-sheet">
      <div className="flex flex-wrap items-start gap-x-4 gap-y-3">
        <div className="min-w-48 flex-1">
          <TextField
            at={[list, i, "label"]}
            label={list === "lengths" ? "Length" : "Edging or seam"}
            value={item.label}
            onText={(label) => set((each) => ({ ...each, label }), "label")}
          />
        </div>
        <div className="w-52 max-w-full">
          <ChoiceField
            at={[list, i, "scope"]}
            label="Numbers"
            value={typeof cm === "object" ? "each" : "all"}
            choices={SCOPES}
            onChoice={(value) => scope(value === "each")}
          />
        </div>
        {typeof cm === "object" ? null : (
          <div data-row={i} data-column={0} className="max-sm:w-full">
            <span aria-hidden="true" className="mb-0.5 block text-sm text-soft">
              {list === "lengths" ? "It measures" : "It adds or takes"}
            </span>
            <CmField
              list={list}
              at={[list, i, "cm"]}
              question={`${list}.${item.id}.cm`}
              label={`${item.label}, all sizes`}
              behind={unit}
              value={cm}
              onTyped={(typed, isTyping) => set((each) => withCm(each, null, typed), isTyping ? "cm" : null)}
            />
          </div>
        )}
        <span className="ml-auto self-end">
          <ItemButtons
            name={item.label || `${list === "lengths" ? "length" : "edging or seam"} ${i + 1}`}
            onUp={i === 0 ? undefined : () => move(-1)}
            onDown={isLast ? undefined : () => move(1)}
            onRemove={onRemove}
          />
        </span>
      </div>
      {length === undefined ? null : <MeasuredWhen length={length} i={i} />}
      {typeof cm === "object" ? <CmBySize {...{ list, item, i }} cm={cm} onItem={set} /> : null}
      <p className="mt-2 text-sm text-soft">
        {uses.length === 0 ? "Not used in any measurement yet." : `Used in ${usesWords(uses)}.`}
      </p>
    </li>
  );
}

interface CmBySizeProps extends Pick<CmRowProps, "list" | "item" | "i"> {
  readonly cm: Exclude<CmItem["cm"], number | string>;
  readonly onItem: (next: (item: CmItem) => CmItem, field: string | null) => void;
}

function CmBySize({ list, item, i, cm, onItem }: CmBySizeProps) {
  const { pattern, unit } = useEditing("pattern", "unit");
  return (
    <div className="mt-3">
      <TableFrame label={`${item.label} by size`}>
        <table className={TABLE}>
          <thead className={TABLE_HEAD}>
            <tr>
              {pattern.sizes.map(({ id, label }) => (
                <th key={id} scope="col" className="text-right wrap-anywhere">
                  {label}, {unit}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            <tr className="align-top">
              {pattern.sizes.map(({ id, label }, column) => (
                <td
                  key={id}
                  data-row={i}
                  data-column={column}
                  className="min-w-26 px-1.5! has-[[aria-invalid=true]]:min-w-44"
                >
                  <CmField
                    list={list}
                    at={[list, i, "cm", id]}
                    question={`${list}.${item.id}.cm.${id}`}
                    label={`${item.label}, ${label}`}
                    value={ownValue(cm, id)}
                    onTyped={(typed, isTyping) =>
                      onItem((each) => withCm(each, id, typed), isTyping ? `cm.${id}` : null)
                    }
                  />
                </td>
              ))}
            </tr>
          </tbody>
        </table>
      </TableFrame>
    </div>
  );
}
