"use client";

import { useState } from "react";
import type { DraftPattern } from "@/engine/editing";
import { formatPath, type PathPart } from "@/engine/pattern";
import { Button } from "@/ui/button";
import { useEditing } from "./editing";
import { ChoiceField, NumberField, type Choice } from "./fields";
import type { DraftNumber, DraftStepOf } from "./draft-garment";
import { withNewCount } from "./paste-counts";

type Direction = DraftPattern["counts"][number]["direction"];
type DraftRows = DraftStepOf<"work">["rows"];

interface NumberChoiceProps {
  /** Path of the number in the draft. */
  readonly at: readonly PathPart[];
  readonly label: string;
  readonly value: DraftNumber;
  /** Which counts it may be; left out for those of both. */
  readonly direction?: Direction;
  /** Sets it in a pattern, which may have a new count. */
  readonly onNumber: (number: DraftNumber, field: string | null) => void;
}

/** A number of a step: a count, a new count, or a whole number that is the same in all sizes. */
export function NumberChoice({ onNumber, ...props }: NumberChoiceProps) {
  return (
    <RowsChoice
      {...props}
      onRows={(rows, field) => {
        if (typeof rows !== "object" || "count" in rows) onNumber(rows, field);
      }}
    />
  );
}

interface RowsChoiceProps extends Omit<NumberChoiceProps, "value" | "onNumber"> {
  readonly value: DraftRows;
  readonly withLengths?: boolean;
  readonly onRows: (rows: DraftRows, field: string | null) => void;
}

/** The same, or a length that is worked to. */
export function RowsChoice({ at, label, value, direction, withLengths = false, onRows }: RowsChoiceProps) {
  const { pattern } = useEditing("pattern");
  const [isNaming, setNaming] = useState(false);
  const isWhole = typeof value !== "object";
  const choose = (chosen: string) => {
    if (chosen === NEW) return setNaming(true);
    setNaming(false);
    if (chosen === WHOLE) return onRows("", null);
    const [kind, id = ""] = chosen.split(" ");
    onRows(kind === "length" ? { length: id } : { ...shareOf(value), count: id }, null);
  };
  return (
    <div className="flex flex-wrap items-start gap-2">
      <div className="w-56 max-w-full">
        <ChoiceField
          at={isWhole ? [...at, "kind"] : [...at, "length" in value ? "length" : "count"]}
          label={label}
          value={isNaming ? NEW : choiceOf(value)}
          choices={choicesOf(pattern, { direction, withLengths })}
          onChoice={choose}
        />
      </div>
      {isWhole && !isNaming ? (
        <span className="self-end">
          <NumberField
            at={at}
            label={`${label}: number`}
            labelled="aloud"
            className="w-17"
            value={value}
            onText={(text) => onRows(text, formatPath(at))}
          />
        </span>
      ) : null}
      {isNaming ? <NewCount direction={direction ?? "stitches"} onCount={(id) => choose(`count ${id}`)} /> : null}
      {!isWhole && "count" in value && !isNaming && value.count !== "" ? (
        <ShareFields at={at} value={value} onShare={onRows} />
      ) : null}
    </div>
  );
}

const WHOLE = "whole";
const NEW = "new";

function choiceOf(value: DraftRows): string {
  if (typeof value !== "object") return WHOLE;
  const [kind, id] = "length" in value ? ["length", value.length] : ["count", value.count];
  return id === "" ? "" : `${kind} ${id}`;
}

function shareOf(value: DraftRows) {
  return typeof value === "object" && "count" in value ? value : {};
}

function choicesOf(
  { counts, lengths = [] }: DraftPattern,
  { direction, withLengths }: { readonly direction: Direction | undefined; readonly withLengths: boolean },
): (Choice | { readonly group: string; readonly choices: readonly Choice[] })[] {
  const named = (kind: string, items: readonly { readonly id: string; readonly label: string }[]) =>
    items.map(({ id, label }) => ({ value: `${kind} ${id}`, label: label || id }));
  const group = (name: string, choices: readonly Choice[]) => (choices.length === 0 ? [] : [{ group: name, choices }]);
  const ofDirection = (asked: Direction) =>
    direction === undefined || direction === asked ? counts.filter((count) => count.direction === asked) : [];
  return [
    ...group("Counts of stitches", named("count", ofDirection("stitches"))),
    ...group("Counts of rows", named("count", ofDirection("rows"))),
    ...(withLengths ? group("Lengths", named("length", lengths)) : []),
    { value: WHOLE, label: "The same in every size" },
    { value: NEW, label: "New count …" },
  ];
}

/** Names a count that the step needs, and takes it. */
function NewCount({ direction, onCount }: { readonly direction: Direction; readonly onCount: (id: string) => void }) {
  const { pattern, change } = useEditing("pattern", "change");
  const [label, setLabel] = useState("");
  const add = () => {
    const name = label.trim();
    const added = withNewCount(pattern, name, direction).counts.at(-1);
    if (name === "" || added === undefined) return;
    change((now) => withNewCount(now, name, direction), null);
    onCount(added.id);
  };
  return (
    <div className="flex items-end gap-2">
      <label className="block text-sm text-soft">
        Name of the new count
        <input
          autoFocus
          autoComplete="off"
          value={label}
          onChange={({ target }) => setLabel(target.value)}
          className="control mt-0.5 block min-h-11 w-44 max-w-full px-2 text-base text-ink"
        />
      </label>
      <Button look="quiet" onClick={add}>
        Add count
      </Button>
    </div>
  );
}

type Share = Extract<DraftNumber, { readonly count: string }>;

interface ShareFieldsProps {
  readonly at: readonly PathPart[];
  readonly value: Share;
  readonly onShare: (share: Share, field: string | null) => void;
}

/** A multiple or a share of a count, such as half of it. */
function ShareFields({ at, value, onShare }: ShareFieldsProps) {
  const { times, over, ...count } = value;
  if (times === undefined && over === undefined)
    return (
      <button
        type="button"
        className="min-h-11 self-end text-link text-sm"
        onClick={() => onShare({ ...count, times: 1, over: 2 }, null)}
      >
        a share of it
      </button>
    );
  return (
    <span className="flex items-start gap-2">
      <NumberField
        at={[...at, "times"]}
        label="times"
        className="w-14"
        value={times ?? 1}
        onText={(text) => onShare({ ...value, times: text }, formatPath([...at, "times"]))}
      />
      <NumberField
        at={[...at, "over"]}
        label="divided by"
        className="w-14"
        value={over ?? 1}
        onText={(text) => onShare({ ...value, over: text }, formatPath([...at, "over"]))}
      />
      <button type="button" className="min-h-11 self-end text-link text-sm" onClick={() => onShare(count, null)}>
        all of it
      </button>
    </span>
  );
}
