"use client";

import { AskedForm } from "@/ui/asked-form";
import { describedBy, Field, FieldErrors, TextInput } from "@/ui/field";
import { signOff } from "./follow-up-actions";

interface SignOffFormProps {
  readonly patternId: string;
  /** Those that are not tested again. */
  readonly sizes: readonly { readonly id: string; readonly label: string }[];
  readonly ownName: string;
}

interface Fields extends Record<string, unknown> {
  readonly sizes: readonly string[];
  readonly checkedBy: string;
}

/** Notes by name that somebody has checked corrected sizes; the date is that of the day. */
export function SignOffForm({ patternId, sizes, ownName }: SignOffFormProps) {
  return (
    <AskedForm<Fields>
      question="Sign off without another test"
      about="for corrected sizes"
      intro="It is shown as “checked, not re-tested”, with the name and today’s date, until a report confirms it."
      action={signOff}
      sends={{ patternId }}
      button="Sign off"
      waiting="Saving …"
    >
      {({ sizes: chosen, checkedBy }) => (
        <>
          <fieldset className="mb-4" aria-describedby={describedBy(chosen.id)}>
            <legend className="font-semibold">Sizes that were checked</legend>
            <div className="flex flex-wrap gap-x-6">
              {sizes.map(({ id, label }) => (
                <label key={id} className="flex min-h-11 cursor-pointer items-center gap-2.5">
                  <input
                    type="checkbox"
                    name={chosen.name}
                    value={id}
                    defaultChecked={sizes.length === 1}
                    className="size-5 shrink-0 accent-thread"
                  />
                  {label}
                </label>
              ))}
            </div>
            <FieldErrors id={chosen.id} errors={chosen.errors} />
          </fieldset>
          <Field id={checkedBy.id} label="Checked by" errors={checkedBy.errors}>
            <TextInput
              id={checkedBy.id}
              name={checkedBy.name}
              defaultValue={ownName}
              autoComplete="off"
              dir="auto"
              aria-describedby={describedBy(checkedBy.id)}
            />
          </Field>
        </>
      )}
    </AskedForm>
  );
}
