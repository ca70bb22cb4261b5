"use client";

import type { PatternDocument } from "@/engine/pattern";
import type { ColumnChoice } from "@/engine/tables";
import { valueOfChoice, type OptionGroup } from "./paste-column-options";

const SMALL = "min-h-9 rounded border border-line-strong bg-white px-2 py-1 text-sm text-ink";

interface PasteColumnChoiceProps {
  readonly heading: string;
  readonly choice: ColumnChoice;
  readonly fault?: string;
  readonly groups: readonly OptionGroup[];
  readonly pattern: PatternDocument;
  readonly onChange: (choice: ColumnChoice) => void;
}

/** Above a column: what it holds and, for lengths, the unit and whether girths were measured flat. */
export function PasteColumnChoice({ heading, choice, fault, groups, pattern, onChange }: PasteColumnChoiceProps) {
  const isOut = choice.kind === "leave out";
  return (
    <div className="flex h-full flex-col gap-1.5">
      <select
        aria-label={`What “${heading}” holds`}
        aria-invalid={fault !== undefined}
        className={`${SMALL} w-full aria-invalid:border-2 aria-invalid:border-thread ${isOut ? "" : "border-ink font-semibold"}`}
        value={valueOfChoice(choice)}
        onChange={({ currentTarget }) => onChange(chosen(groups, currentTarget.value, choice))}
      >
        <option value="leave out">Leave out</option>
        {groups.map(({ label, options }) => (
          <optgroup key={label} label={label}>
            {options.map(({ value, label: text }) => (
              <option key={value} value={value}>
                {text}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
      {choice.kind === "yarn" ? (
        <select
          aria-label={`Unit of “${heading}”`}
          className={SMALL}
          value={choice.amountIn}
          onChange={({ currentTarget }) => onChange({ ...choice, amountIn: amountOf(currentTarget.value) })}
        >
          {Object.entries(AMOUNTS).map(([unit, label]) => (
            <option key={unit} value={unit}>
              {label}
            </option>
          ))}
        </select>
      ) : null}
      {choice.kind === "fit" ? (
        <select
          aria-label={`Scale of “${heading}”`}
          className={SMALL}
          value={String(choice.isOneToFive)}
          onChange={({ currentTarget }) => onChange({ ...choice, isOneToFive: currentTarget.value === "true" })}
        >
          <option value="true">words, or 1 tight to 5 loose</option>
          <option value="false">words, or −2 tight to 2 loose</option>
        </select>
      ) : null}
      {"unit" in choice ? <UnitChoice heading={heading} choice={choice} pattern={pattern} onChange={onChange} /> : null}
      <span className={`line-clamp-3 font-normal leading-snug ${isOut ? "text-soft" : "text-ink"}`} title={heading}>
        {heading}
      </span>
    </div>
  );
}

type YarnUnit = Extract<ColumnChoice, { kind: "yarn" }>["amountIn"];

const AMOUNTS: Readonly<Record<YarnUnit, string>> = {
  g: "grams",
  oz: "ounces",
  m: "metres",
  yd: "yards",
  balls: "balls or skeins",
};

function amountOf(value: string): YarnUnit {
  return value === "oz" || value === "m" || value === "yd" || value === "balls" ? value : "g";
}

/** The option with that value, keeping the column's unit. */
function chosen(groups: readonly OptionGroup[], value: string, before: ColumnChoice): ColumnChoice {
  const found = groups.flatMap(({ options }) => options).find((option) => option.value === value)?.choice ?? {
    kind: "leave out" as const,
  };
  return "unit" in found && "unit" in before ? { ...found, unit: before.unit } : found;
}

type WithUnit = Extract<ColumnChoice, { unit: string }>;

interface UnitChoiceProps {
  readonly heading: string;
  readonly choice: WithUnit;
  readonly pattern: PatternDocument;
  readonly onChange: (choice: ColumnChoice) => void;
}

function UnitChoice({ heading, choice, pattern, onChange }: UnitChoiceProps) {
  const isGirth =
    choice.kind === "measurement" && pattern.measurements.find(({ id }) => id === choice.id)?.girth === true;
  return (
    <div className="flex gap-1.5">
      <select
        aria-label={`Unit of “${heading}”`}
        className={SMALL}
        value={choice.unit}
        onChange={({ currentTarget }) => onChange({ ...choice, unit: currentTarget.value === "in" ? "in" : "cm" })}
      >
        <option value="cm">cm</option>
        <option value="in">in</option>
      </select>
      {isGirth ? (
        <select
          aria-label={`How “${heading}” was measured`}
          className={`${SMALL} min-w-0 flex-1`}
          value={choice.flat ? "flat" : "around"}
          onChange={({ currentTarget }) => onChange({ ...choice, flat: currentTarget.value === "flat" })}
        >
          <option value="around">all around</option>
          <option value="flat">laid flat: double it</option>
        </select>
      ) : null}
    </div>
  );
}
