import { FieldErrors } from "@/ui/field";
import { typedText } from "./apply-answer";
import { controlId, type Answered } from "./answered";

interface ChoiceFieldProps {
  readonly field: string;
  readonly label: string;
  readonly hint?: string;
  readonly choices: readonly { readonly value: string; readonly label: string }[];
  readonly answered: Answered;
  /** One choice per line, for long labels. */
  readonly isStacked?: boolean;
}

/** A choice between a few values. */
export function ChoiceField({ field, label, hint, choices, answered, isStacked }: ChoiceFieldProps) {
  const id = controlId(field);
  const chosen = typedText(answered.typed, field);
  return (
    <fieldset id={id} tabIndex={-1} aria-describedby={`${id}-hint ${id}-error`} className="mb-5 min-w-0">
      <legend className="font-semibold">{label}</legend>
      {hint ? (
        <p id={`${id}-hint`} className="text-sm text-soft">
          {hint}
        </p>
      ) : null}
      <div className={isStacked ? "" : "flex flex-wrap gap-x-8"}>
        {choices.map(({ value, label: text }) => (
          <label key={value} className="flex min-h-11 cursor-pointer items-center gap-3">
            <input
              type="radio"
              name={field}
              value={value}
              defaultChecked={value === chosen}
              className="size-5 shrink-0 accent-thread"
            />
            {text}
          </label>
        ))}
      </div>
      <FieldErrors id={id} errors={answered.faults[field]} />
    </fieldset>
  );
}
