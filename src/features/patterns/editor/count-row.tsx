"use client";

import type { DraftPattern } from "@/engine/editing";
import { formatPath } from "@/engine/pattern";
import { useEditing } from "./editing";
import { ChoiceField, NumberField, TextField, TickField } from "./fields";
import { ItemButtons } from "./item-buttons";
import { moveItem, removeItem, replaceItem } from "./list-items";
import { withLeast, withRepeatOf, withWholeRule } from "./paste-counts";

type DraftCount = DraftPattern["counts"][number];

const DIRECTIONS = [
  { value: "stitches", label: "stitches" },
  { value: "rows", label: "rows or rounds" },
];

/** One count and the rules for its numbers. */
export function CountRow({ count, index }: { readonly count: DraftCount; readonly index: number }) {
  const { pattern, change } = useEditing("pattern", "change");
  const path = ["counts", index] as const;
  const set = (next: DraftCount, field: string | null) =>
    change((now) => ({ ...now, counts: replaceItem(now.counts, index, next) }), field && formatPath([...path, field]));
  const reorder = (by: -1 | 1) => change((now) => ({ ...now, counts: moveItem(now.counts, index, by) }), null);
  const name = count.label || `count ${index + 1}`;
  return (
    <li className="min-w-0 rounded-sheet border border-line bg-sheet px-4 py-3 shadow-sheet">
      <div className="flex flex-wrap items-start gap-x-3 gap-y-3">
        <div data-row={index} data-column={0} className="min-w-36 flex-1">
          <TextField
            at={[...path, "label"]}
            label="Count"
            value={count.label}
            onText={(label) => set({ ...count, label }, "label")}
          />
        </div>
        <div className="w-35">
          <ChoiceField
            at={[...path, "direction"]}
            label="of"
            value={count.direction}
            choices={DIRECTIONS}
            onChoice={(value) => set({ ...count, direction: value === "rows" ? "rows" : "stitches" }, null)}
          />
        </div>
        {pattern.fabrics.length === 1 && pattern.fabrics[0]?.id === count.fabric ? null : (
          <div className="w-44 max-w-full">
            <ChoiceField
              at={[...path, "fabric"]}
              label="Fabric"
              value={count.fabric}
              choices={pattern.fabrics.map(({ id, label }) => ({ value: id, label }))}
              onChoice={(fabric) => set({ ...count, fabric }, null)}
            />
          </div>
        )}
        <CountRules count={count} i={index} onCount={set} />
        <span className="ml-auto self-end">
          <ItemButtons
            name={name}
            onUp={index === 0 ? undefined : () => reorder(-1)}
            onDown={index === pattern.counts.length - 1 ? undefined : () => reorder(1)}
            onRemove={() => change((now) => withoutCount(now, count.id, index), null)}
          />
        </span>
      </div>
    </li>
  );
}

interface CountRulesProps {
  readonly count: DraftCount;
  readonly i: number;
  readonly onCount: (next: DraftCount, field: string | null) => void;
}

function CountRules({ count, i, onCount }: CountRulesProps) {
  const { repeat, least, mayShrink } = count;
  const path = ["counts", i] as const;
  return (
    <div className="flex flex-wrap items-start gap-x-3 gap-y-3">
      <div className="flex items-start gap-1.5">
        <div data-row={i} data-column={1}>
          <NumberField
            at={[...path, "repeat", "of"]}
            label="Multiple of"
            placeholder="any"
            className="w-17"
            value={repeat?.of}
            onText={(of) => onCount(withRepeatOf(count, of), "repeat.of")}
            onLeave={(text) => {
              const read = withWholeRule(count, text);
              if (read !== count) onCount(read, null);
            }}
          />
        </div>
        {repeat ? (
          <div data-row={i} data-column={2}>
            <NumberField
              at={[...path, "repeat", "plus"]}
              label="plus"
              className="w-14"
              value={repeat.plus}
              onText={(plus) => onCount({ ...count, repeat: { ...repeat, plus } }, "repeat.plus")}
            />
          </div>
        ) : null}
      </div>
      <div data-row={i} data-column={3}>
        <NumberField
          at={[...path, "least"]}
          label="At least"
          placeholder="1"
          className="w-17"
          value={least}
          onText={(text) => onCount(withLeast(count, text), "least")}
        />
      </div>
      <div className="self-end text-sm">
        <TickField
          label="may be smaller in a larger size"
          checked={mayShrink ?? false}
          onTick={(ticked) => {
            const { mayShrink: _before, ...rest } = count;
            onCount(ticked ? { ...rest, mayShrink: true } : rest, null);
          }}
        />
      </div>
    </div>
  );
}

/** Its numbers are removed too; sums, measurements and pieces that use it show that it is missing. */
function withoutCount(pattern: DraftPattern, id: string, index: number): DraftPattern {
  const { [id]: _numbers, ...grading } = pattern.grading ?? {};
  return { ...pattern, counts: removeItem(pattern.counts, index), ...(pattern.grading && { grading }) };
}
