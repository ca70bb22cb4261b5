"use client";

import { getTextareaProps } from "@conform-to/react";
import { Button } from "@/ui/button";
import { describedBy, Field, FieldErrors, Select, TextArea } from "@/ui/field";
import { FormErrors } from "@/ui/form-errors";
import { useActionForm } from "@/ui/use-action-form";
import { publish } from "./correction-actions";

interface CorrectionFormProps {
  readonly callId: string;
  /** Made once for the form. */
  readonly formKey: string;
  readonly sizes: readonly { readonly id: string; readonly label: string }[];
  /** The passages of the newest instructions. */
  readonly places: readonly { readonly key: string; readonly words: string }[];
}

interface Fields extends Record<string, unknown> {
  readonly text: string;
  readonly place: string;
  readonly sizes: readonly string[];
}

/** Publishes a correction to all testers, or to those of some sizes. */
export function CorrectionForm({ callId, formKey, sizes, places }: CorrectionFormProps) {
  const { formProps, formErrors, fields, pending } = useActionForm<Fields>(publish);
  const { text, place } = fields;
  const isRefused = [formErrors, text.errors, place.errors, fields.sizes.errors].some((errors) => errors !== undefined);
  return (
    <details open={isRefused || undefined}>
      <summary className="text-link inline-flex min-h-11 items-center">Write a correction</summary>
      <form {...formProps} className="mt-3 max-w-2xl">
        <FormErrors errors={formErrors} />
        <input type="hidden" name="callId" value={callId} />
        <input type="hidden" name="formKey" value={formKey} />
        <Field
          id={text.id}
          label="What is wrong, and what is right"
          hint="Testers see it on their page until they have read it. It can’t be changed afterwards; publish another if you need to."
          errors={text.errors}
        >
          <TextArea
            {...getTextareaProps(text)}
            key="text"
            rows={3}
            dir="auto"
            className="field-sizing-content max-h-96 min-h-24"
            aria-describedby={describedBy(text.id)}
          />
        </Field>
        {places.length === 0 ? null : (
          <Field id={place.id} label="Passage of the instructions (optional)" errors={place.errors}>
            <Select
              id={place.id}
              name="place"
              defaultValue={place.initialValue ?? ""}
              aria-describedby={describedBy(place.id)}
            >
              <option value="">None in particular</option>
              {places.map(({ key, words }) => (
                <option key={key} value={key}>
                  {words}
                </option>
              ))}
            </Select>
          </Field>
        )}
        <SizeChoice id={fields.sizes.id} sizes={sizes} {...chosenSizes(fields.sizes)} />
        <Button type="submit" disabled={pending}>
          {pending ? "Publishing …" : "Publish correction"}
        </Button>
      </form>
    </details>
  );
}

interface SizeChoiceProps extends Pick<CorrectionFormProps, "sizes"> {
  readonly id: string;
  readonly chosen: readonly string[];
  readonly errors?: readonly string[];
}

function SizeChoice({ id, sizes, chosen, errors }: SizeChoiceProps) {
  return (
    <fieldset className="mb-5" aria-describedby={describedBy(id)}>
      <legend className="mb-1 font-semibold">Sizes that it concerns</legend>
      <p id={`${id}-hint`} className="text-sm text-soft">
        Choose none if it concerns all of them.
      </p>
      <div className="flex flex-wrap gap-x-6">
        {sizes.map((size) => (
          <label key={size.id} className="flex min-h-11 cursor-pointer items-center gap-2.5">
            <input
              type="checkbox"
              name="sizes"
              value={size.id}
              defaultChecked={chosen.includes(size.id)}
              className="size-5 shrink-0 accent-thread"
            />
            <bdi>{size.label}</bdi>
          </label>
        ))}
      </div>
      <FieldErrors id={id} errors={errors} />
    </fieldset>
  );
}

/** What a refused form sent: one text where one size was chosen, else a list. */
function chosenSizes(field: { readonly initialValue?: unknown; readonly errors?: string[] }) {
  return { chosen: [field.initialValue].flat().map(String), errors: field.errors };
}
