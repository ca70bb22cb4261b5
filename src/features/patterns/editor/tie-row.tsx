"use client";

import type { DraftPattern } from "@/engine/editing";
import { formatPath } from "@/engine/pattern";
import { useEditing } from "./editing";
import { ChoiceField, NumberField } from "./fields";
import { ItemButtons } from "./item-buttons";
import { removeItem, replaceItem } from "./list-items";
import { TieResult } from "./tie-result";

type DraftTie = DraftPattern["ties"][number];

/** One sum: a multiple of a count, and what it must match. */
export function TieRow({ tie, i }: { readonly tie: DraftTie; readonly i: number }) {
  const { change } = useEditing("change");
  const path = ["ties", i] as const;
  const set = (next: DraftTie, field: string | null) =>
    change((now) => ({ ...now, ties: replaceItem(now.ties, i, next) }), field && formatPath([...path, field]));
  const setPer = (per: string) => {
    const { per: _before, ...rest } = tie;
    set(per.trim() === "" ? rest : { ...rest, per }, "per");
  };
  const setWithin = (within: string) => {
    const { within: _before, ...rest } = tie;
    set(within.trim() === "" ? rest : { ...rest, within }, "within");
  };
  return (
    <li className="min-w-0 rounded-sheet border border-line bg-sheet px-4 py-3 shadow-sheet">
      <div className="flex flex-wrap items-start gap-x-4 gap-y-3">
        <TimesCount
          at={path}
          times="per"
          value={tie.per}
          count={tie.count}
          onTimes={setPer}
          onCount={(count) => set({ ...tie, count }, null)}
        />
        <span className="self-center pt-4 font-semibold">meets</span>
        <TieParts tie={tie} at={i} onTie={set} />
        <NumberField
          at={[...path, "within"]}
          label="within ±"
          placeholder="0"
          className="w-17"
          value={tie.within}
          onText={setWithin}
        />
        <span className="ml-auto self-end">
          <ItemButtons
            name={`sum ${i + 1}`}
            onRemove={() => change((now) => ({ ...now, ties: removeItem(now.ties, i) }), null)}
          />
        </span>
      </div>
      <TieResult index={i} />
    </li>
  );
}

interface TiePartsProps {
  readonly tie: DraftTie;
  readonly at: number;
  readonly onTie: (next: DraftTie, field: string | null) => void;
}

function TieParts({ tie, at, onTie }: TiePartsProps) {
  const setPart = (index: number, part: DraftTie["equals"][number], field: string | null) =>
    onTie({ ...tie, equals: replaceItem(tie.equals, index, part) }, field);
  return (
    <ul className="grid min-w-0 gap-2">
      {tie.equals.map((part, index) => (
        <li key={index} className="flex min-w-0 items-start gap-1">
          <TimesCount
            at={["ties", at, "equals", index]}
            times="times"
            value={part.times}
            count={part.count}
            onTimes={(times) => setPart(index, { ...part, times }, `equals.${index}`)}
            onCount={(count) => setPart(index, { ...part, count }, null)}
          />
          {tie.equals.length > 1 ? (
            <button
              type="button"
              className="mt-5.5 min-h-11 min-w-9 rounded-md text-soft hover:bg-band hover:text-ink"
              aria-label={`Remove part ${index + 1} of sum ${at + 1}`}
              onClick={() => onTie({ ...tie, equals: removeItem(tie.equals, index) }, null)}
            >
              ✕
            </button>
          ) : null}
        </li>
      ))}
      <li>
        <button
          type="button"
          className="text-link min-h-8 text-sm"
          onClick={() => onTie({ ...tie, equals: [...tie.equals, { times: 1, count: "" }] }, null)}
        >
          + and
        </button>
      </li>
    </ul>
  );
}

interface TimesCountProps {
  readonly at: readonly (string | number)[];
  /** Name of the number in the document. */
  readonly times: "per" | "times";
  readonly value: number | string | undefined;
  readonly count: string;
  readonly onTimes: (text: string) => void;
  readonly onCount: (count: string) => void;
}

function TimesCount({ at, times, value, count, onTimes, onCount }: TimesCountProps) {
  const { pattern } = useEditing("pattern");
  const of = (direction: "stitches" | "rows") =>
    pattern.counts
      .filter((each) => each.direction === direction)
      .map(({ id, label }) => ({ value: id, label: label || id }));
  return (
    <div className="flex min-w-0 items-start gap-1.5">
      <NumberField at={[...at, times]} label="times" placeholder="1" className="w-14" value={value} onText={onTimes} />
      <div className="w-52 min-w-0 shrink">
        <ChoiceField
          at={[...at, "count"]}
          label="Count"
          value={count}
          choices={[
            { group: "Stitches", choices: of("stitches") },
            { group: "Rows", choices: of("rows") },
          ]}
          onChoice={onCount}
        />
      </div>
    </div>
  );
}
