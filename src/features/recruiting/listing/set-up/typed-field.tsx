import type { ReactNode } from "react";
import { Field, Select, TextArea, TextInput } from "@/ui/field";
import { ZoneInput } from "@/ui/zone-input";
import type { ListingFormState } from "./listing-form-state";

interface TypedFieldProps {
  readonly state: ListingFormState;
  readonly name: string;
  readonly label: string;
  readonly hint?: ReactNode;
}

/** A date, with the browser's own picker. */
export function DayField(props: TypedFieldProps) {
  return <TypedField {...props}>{(control) => <TextInput {...control} type="date" className="numbers" />}</TypedField>;
}

/** One line of text. */
export function LineField({ numeric = false, ...props }: TypedFieldProps & { readonly numeric?: boolean }) {
  return (
    <TypedField {...props}>
      {(control) => (
        <TextInput
          {...control}
          autoComplete="off"
          inputMode={numeric ? "numeric" : undefined}
          className={numeric ? "numbers max-w-32" : ""}
        />
      )}
    </TypedField>
  );
}

/** A time zone by name. */
export function ZoneField(props: TypedFieldProps) {
  return <TypedField {...props}>{(control) => <ZoneInput {...control} />}</TypedField>;
}

/** Several lines of text. */
export function TextField({ rows = 4, ...props }: TypedFieldProps & { readonly rows?: number }) {
  return <TypedField {...props}>{(control) => <TextArea {...control} rows={rows} />}</TypedField>;
}

/** A choice between several values. */
export function ChoiceField({
  choices,
  ...props
}: TypedFieldProps & { readonly choices: readonly { readonly value: string; readonly label: string }[] }) {
  return (
    <TypedField {...props}>
      {(control) => (
        <Select {...control}>
          {choices.map(({ value, label }) => (
            <option key={value} value={value}>
              {label}
            </option>
          ))}
        </Select>
      )}
    </TypedField>
  );
}

interface Control {
  readonly id: string;
  readonly name: string;
  readonly defaultValue: string;
  readonly "aria-describedby": string;
  readonly "aria-invalid": boolean | undefined;
}

function TypedField({
  state,
  name,
  label,
  hint,
  children,
}: TypedFieldProps & { readonly children: (control: Control) => ReactNode }) {
  const { id, errors, theirs, control } = state.field(name);
  return (
    <Field id={id} label={label} hint={hint} errors={errors}>
      {children(control)}
      {theirs === null ? null : <Theirs text={theirs} />}
    </Field>
  );
}

/** What somebody else has saved in this field in the meantime. */
export function Theirs({ text }: { readonly text: string }) {
  return (
    <div className="mt-1.5 border-l-4 border-line-strong pl-3 text-sm">
      <p className="font-semibold">Their version:</p>
      <p className="whitespace-pre-wrap wrap-anywhere">{text === "" ? "(empty)" : text}</p>
    </div>
  );
}
