import type { ComponentProps, ReactNode } from "react";
import { describedBy, Field, TextArea, TextInput } from "@/ui/field";
import { typedText } from "./apply-answer";
import { controlId, type Answered } from "./answered";

interface NamedField {
  readonly field: string;
  readonly label: string;
  readonly hint?: ReactNode;
  readonly answered: Answered;
}

/** One line of text. */
export function LineField({
  field,
  label,
  hint,
  answered,
  ...rest
}: NamedField & Pick<ComponentProps<"input">, "type" | "autoComplete" | "required">) {
  return (
    <Field id={controlId(field)} label={label} hint={hint} errors={answered.faults[field]}>
      <TextInput {...rest} {...controlProps(field, answered)} />
    </Field>
  );
}

/** Several lines of text. */
export function TextField({ field, label, hint, answered }: NamedField) {
  return (
    <Field id={controlId(field)} label={label} hint={hint} errors={answered.faults[field]}>
      <TextArea {...controlProps(field, answered)} rows={3} />
    </Field>
  );
}

function controlProps(field: string, { typed, faults }: Answered) {
  const id = controlId(field);
  return {
    id,
    name: field,
    defaultValue: typedText(typed, field),
    "aria-describedby": describedBy(id),
    "aria-invalid": faults[field] ? true : undefined,
  };
}
