"use client";

import type { PathPart } from "@/engine/pattern";
import type { Typed } from "@/engine/editing";
import { useEditing } from "./editing";
import { ChoiceField, NumberField, TickField } from "./fields";
import { choiceOf, mayBeStretched, takenBy, termChoices, withChoice, type DraftFlat } from "./term-choices";
import { signOf, withoutSign, withSign } from "./term-sign";

const SIGNS = [
  { value: "1", label: "adds" },
  { value: "-1", label: "less" },
];

interface TimesFieldsProps {
  /** Path of the line in the draft. */
  readonly at: readonly PathPart[];
  /** Name of the line for screen readers. */
  readonly name: string;
  readonly times: Typed;
  readonly onTimes: (times: Typed, field: string | null) => void;
}

/** Whether a line adds or takes, and how often. */
export function TimesFields({ at, name, times, onTimes }: TimesFieldsProps) {
  return (
    <span className="flex items-start gap-1.5">
      <ChoiceField
        at={[...at, "sign"]}
        label={`${name}: plus or minus`}
        labelled="aloud"
        className="w-21"
        value={String(signOf(times))}
        choices={SIGNS}
        onChoice={(value) => onTimes(withSign(withoutSign(times), value === "-1" ? -1 : 1), null)}
      />
      <NumberField
        at={[...at, "times"]}
        label={`${name}: times`}
        labelled="aloud"
        className="w-14"
        value={withoutSign(times)}
        onText={(text) => onTimes(withSign(text, signOf(times)), "times")}
      />
      <span className="py-2.5 text-soft" aria-hidden="true">
        ×
      </span>
    </span>
  );
}

interface FlatFieldsProps {
  readonly at: readonly PathPart[];
  readonly name: string;
  readonly term: DraftFlat;
  readonly onTerm: (term: DraftFlat, field: string | null) => void;
}

/** A line: a multiple of a count, a length, an edging or a seam. */
export function FlatFields({ at, name, term, onTerm }: FlatFieldsProps) {
  const { pattern } = useEditing("pattern");
  return (
    <div className="contents min-w-0 flex-1 flex-wrap items-start gap-x-2 gap-y-2 sm:flex">
      <TimesFields
        at={at}
        name={name}
        times={term.times}
        onTimes={(times, field) => onTerm({ ...term, times }, field)}
      />
      <div className="order-2 min-w-44 flex-1 basis-full sm:order-none sm:max-w-md sm:basis-0">
        <ChoiceField
          at={[...at, takenBy(term).kind]}
          label={`${name}: of what`}
          labelled="aloud"
          value={choiceOf(term)}
          choices={termChoices(pattern, term)}
          onChoice={(choice) => onTerm(withChoice(term, choice), null)}
        />
      </div>
      {mayBeStretched(pattern, term) ? <StretchedTick term={term} onTerm={onTerm} /> : null}
    </div>
  );
}

function StretchedTick({ term, onTerm }: Pick<FlatFieldsProps, "term" | "onTerm">) {
  if (!("count" in term)) return null;
  const { stretched: _before, ...rest } = term;
  return (
    <div className="order-3 sm:order-none">
      <TickField
        label="stretched when worn"
        checked={term.stretched ?? false}
        onTick={(ticked) => onTerm(ticked ? { ...rest, stretched: true } : rest, null)}
      />
    </div>
  );
}
