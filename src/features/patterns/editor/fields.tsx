"use client";

import type { ReactNode } from "react";
import { formatPath, type PathPart } from "@/engine/pattern";
import type { Typed } from "@/engine/editing";
import { useTypedEarly } from "@/ui/use-typed-early";
import { useEditingValue } from "./editing";
import { SaidBelow } from "./said-below";
import type { LengthUnit } from "@/engine/units";
import { formatExactLength } from "@/ui/format-exact-length";

interface Common {
  /** Path of the field in the draft, by which its errors are found. */
  readonly at: readonly PathPart[];
  readonly label: string;
  /** Whether the label is visible, or only for screen readers because a table heading shows it. */
  readonly labelled?: "above" | "aloud";
  readonly className?: string;
}

interface NumberFieldProps extends Common {
  readonly value: Typed | undefined;
  readonly kind?: TypedKind;
  readonly question?: string;
  readonly placeholder?: string;
  /** The unit after the number, such as `mm`. */
  readonly behind?: ReactNode;
  readonly onText: (text: string) => void;
  /** Called with the text when the field is left. */
  readonly onLeave?: (text: string) => void;
}

/** A number or a length, stored as typed. */
export function NumberField({ at, label, value, kind = "number", onText, onLeave, ...rest }: NumberFieldProps) {
  const path = formatPath(at);
  const { unit, isFaulty } = useEditingValue(({ unit, faults }) => ({ unit, isFaulty: faults.has(path) }));
  const id = `field-${path}`;
  const shown = typedText(value, kind, unit);
  const input = useTypedEarly<HTMLInputElement>(shown, onText);
  const isEdited = typeof value === "string";
  return (
    <Labelled id={id} label={label} labelled={rest.labelled}>
      <span className="flex items-center gap-1.5">
        <input
          ref={input}
          id={id}
          aria-label={rest.labelled === "aloud" ? label : undefined}
          aria-invalid={isFaulty}
          aria-describedby={`${id}-says`}
          autoComplete="off"
          placeholder={rest.placeholder}
          value={shown}
          onChange={({ target }) => onText(target.value)}
          onBlur={onLeave && (({ target }) => onLeave(target.value))}
          className={`control numbers min-h-11 px-2 text-right ${isEdited ? "border-ink font-semibold" : ""} ${rest.className ?? "w-20"}`}
        />
        {rest.behind ? <span className="text-soft">{rest.behind}</span> : null}
      </span>
      <SaidBelow id={id} path={path} question={rest.question} />
    </Labelled>
  );
}

interface TextFieldProps extends Common {
  readonly value: string;
  readonly lines?: number;
  readonly onText: (text: string) => void;
}

/** The designer's own text. */
export function TextField({ at, label, labelled, value, lines, className = "w-full", onText }: TextFieldProps) {
  const path = formatPath(at);
  const isFaulty = useEditingValue(({ faults }) => faults.has(path));
  const id = `field-${path}`;
  const shared = {
    id,
    value,
    "aria-label": labelled === "aloud" ? label : undefined,
    "aria-invalid": isFaulty,
    "aria-describedby": `${id}-says`,
    className: `control min-h-11 px-2 ${className}`,
  };
  return (
    <Labelled id={id} label={label} labelled={labelled}>
      {lines === undefined ? (
        <input {...shared} autoComplete="off" onChange={({ target }) => onText(target.value)} />
      ) : (
        <textarea {...shared} rows={lines} onChange={({ target }) => onText(target.value)} />
      )}
      <SaidBelow id={id} path={path} />
    </Labelled>
  );
}

export interface Choice {
  readonly value: string;
  readonly label: string;
}

interface ChoiceFieldProps extends Common {
  readonly value: string;
  readonly choices: readonly (Choice | { readonly group: string; readonly choices: readonly Choice[] })[];
  /** Label of the empty choice; without it, something is always chosen. */
  readonly nothing?: string;
  readonly onChoice: (value: string) => void;
}

/** One of several; a chosen item that was removed stays visible. */
export function ChoiceField({ at, label, labelled, value, choices, nothing, className, onChoice }: ChoiceFieldProps) {
  const path = formatPath(at);
  const isFaulty = useEditingValue(({ faults }) => faults.has(path));
  const id = `field-${path}`;
  const known = choices.flatMap((choice) => ("group" in choice ? choice.choices : [choice]));
  const isGone = value !== "" && known.every((choice) => choice.value !== value);
  return (
    <Labelled id={id} label={label} labelled={labelled}>
      <select
        id={id}
        aria-label={labelled === "aloud" ? label : undefined}
        aria-invalid={isFaulty}
        aria-describedby={`${id}-says`}
        value={value}
        onChange={({ target }) => onChoice(target.value)}
        className={`control min-h-11 max-w-full px-2 ${className ?? "w-full"}`}
      >
        {nothing === undefined && value !== "" ? null : <option value="">{nothing ?? "Choose…"}</option>}
        {isGone ? <option value={value}>{value} (removed)</option> : null}
        {choices.map((choice) =>
          "group" in choice ? (
            choice.choices.length === 0 ? null : (
              <optgroup key={choice.group} label={choice.group}>
                {choice.choices.map(option)}
              </optgroup>
            )
          ) : (
            option(choice)
          ),
        )}
      </select>
      <SaidBelow id={id} path={path} />
    </Labelled>
  );
}

interface OneOfFieldProps<Value extends string> extends Omit<ChoiceFieldProps, "choices" | "nothing" | "onChoice"> {
  readonly value: Value;
  readonly choices: readonly { readonly value: Value; readonly label: string }[];
  readonly onChoice: (value: Value) => void;
}

/** One of a closed list, so that what is chosen is known to be one of them. */
export function OneOfField<Value extends string>({ choices, onChoice, ...field }: OneOfFieldProps<Value>) {
  const choose = (chosen: string) => {
    const known = choices.find(({ value }) => value === chosen);
    if (known !== undefined) onChoice(known.value);
  };
  return <ChoiceField {...field} choices={choices} onChoice={choose} />;
}

function option({ value, label }: Choice) {
  return (
    <option key={value} value={value}>
      {label}
    </option>
  );
}

interface TickFieldProps {
  readonly label: string;
  readonly checked: boolean;
  readonly onTick: (checked: boolean) => void;
}

export function TickField({ label, checked, onTick }: TickFieldProps) {
  return (
    <label className="flex min-h-11 items-center gap-2">
      <input type="checkbox" className="size-5" checked={checked} onChange={({ target }) => onTick(target.checked)} />
      {label}
    </label>
  );
}

interface LabelledProps {
  readonly id: string;
  readonly label: string;
  readonly labelled: Common["labelled"];
  readonly children: ReactNode;
}

function Labelled({ id, label, labelled = "above", children }: LabelledProps) {
  return (
    <div className="min-w-0">
      {labelled === "above" ? (
        <label htmlFor={id} className="mb-0.5 block text-sm text-soft">
          {label}
        </label>
      ) : null}
      {children}
    </div>
  );
}

export type TypedKind = "number" | "length";

/** The content of a field: the text as typed, or the revision's number as one would type it. */
export function typedText(typed: Typed | undefined, kind: TypedKind, unit: LengthUnit): string {
  if (typed === undefined) return "";
  if (typeof typed === "string") return typed;
  return kind === "length" ? formatExactLength(typed, unit) : String(typed).replace("-", "−");
}
