"use client";

import { getTextareaProps } from "@conform-to/react";
import { useState } from "react";
import type { NumberChange } from "@/features/calls/correction-schema";
import { Button } from "@/ui/button";
import { describedBy, Field, FieldErrors, Select, TextArea } from "@/ui/field";
import { FormErrors } from "@/ui/form-errors";
import { useActionForm } from "@/ui/use-action-form";
import { publish } from "./correction-actions";
import type { CountNumbers } from "./count-numbers";
import { CountChoice } from "./count-choice";
import { sentTexts, type SentField } from "./sent-field";
import { NumberRows } from "./number-rows";

interface CorrectionFormProps {
  readonly callId: string;
  /** Made once for the form. */
  readonly formKey: string;
  readonly sizes: readonly { readonly id: string; readonly label: string }[];
  /** The passages of the newest instructions. */
  readonly places: readonly { readonly key: string; readonly words: string }[];
  readonly counts: readonly CountNumbers[];
  /** Ids of the counts whose numbers stand in the form at first. */
  readonly chosen: readonly string[];
  /** Numbers that are filled in at first. */
  readonly changes: readonly NumberChange[];
}

interface Fields extends Record<string, unknown> {
  readonly text: string;
  readonly place: readonly string[];
  readonly sizes: readonly string[];
  readonly count: readonly string[];
  readonly size: readonly string[];
  readonly was: readonly string[];
  readonly becomes: readonly string[];
}

/** Publishes a correction to all testers, or to those of some sizes. */
export function CorrectionForm({
  callId,
  formKey,
  sizes,
  places,
  counts,
  chosen: first,
  changes,
}: CorrectionFormProps) {
  const { formProps, formErrors, fields, pending } = useActionForm<Fields>(publish);
  const [chosen, setChosen] = useState(first);
  const { text, place, becomes } = fields;
  const all = [formErrors, text.errors, place.errors, fields.sizes.errors, becomes.errors];
  const isOpen = first.length > 0 || all.some((errors) => errors !== undefined);
  return (
    <details open={isOpen || undefined}>
      <summary className="text-link inline-flex min-h-11 items-center">Write a correction</summary>
      <CountChoice counts={counts} chosen={chosen} onChange={setChosen} />
      <form {...formProps} className="mt-3 max-w-2xl">
        <FormErrors errors={formErrors} />
        <input type="hidden" name="callId" value={callId} />
        <input type="hidden" name="formKey" value={formKey} />
        <Field
          id={text.id}
          label="What is wrong, and what is right"
          hint="Testers see it on their page. It can’t be changed afterwards; publish another if you need to."
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
        <NumberRows
          id={becomes.id}
          counts={counts.filter(({ id }) => chosen.includes(id))}
          changes={changes}
          sent={fields}
          errors={becomes.errors}
        />
        {places.length === 0 ? null : <Passages field={place} places={places} />}
        <SizeChoice id={fields.sizes.id} sizes={sizes} {...chosenSizes(fields.sizes)} hasNumbers={chosen.length > 0} />
        <Button type="submit" disabled={pending}>
          {pending ? "Publishing …" : "Publish correction"}
        </Button>
      </form>
    </details>
  );
}

interface PassagesProps extends Pick<CorrectionFormProps, "places"> {
  readonly field: SentField & { readonly id: string; readonly errors?: string[] };
}

const FURTHER = ["Second passage", "Third passage"] as const;

function Passages({ field, places }: PassagesProps) {
  const [first = "", ...others] = sentTexts(field);
  return (
    <>
      <Field id={field.id} label="Passage of the instructions (optional)" errors={field.errors}>
        <PassageSelect id={field.id} chosen={first} places={places} />
      </Field>
      <details open={others.some((key) => key !== "") || undefined} className="-mt-3 mb-5">
        <summary className="text-link inline-flex min-h-11 items-center">More passages</summary>
        {FURTHER.map((label, index) => (
          <Field key={label} id={`${field.id}-${index}`} label={label}>
            <PassageSelect id={`${field.id}-${index}`} chosen={others[index] ?? ""} places={places} />
          </Field>
        ))}
      </details>
    </>
  );
}

interface PassageSelectProps extends Pick<CorrectionFormProps, "places"> {
  readonly id: string;
  readonly chosen: string;
}

function PassageSelect({ id, chosen, places }: PassageSelectProps) {
  return (
    <Select id={id} name="place" defaultValue={chosen} aria-describedby={describedBy(id)}>
      <option value="">None in particular</option>
      {places.map(({ key, words }) => (
        <option key={key} value={key}>
          {words}
        </option>
      ))}
    </Select>
  );
}

interface SizeChoiceProps extends Pick<CorrectionFormProps, "sizes"> {
  readonly id: string;
  readonly chosen: readonly string[];
  readonly errors?: readonly string[];
  readonly hasNumbers: boolean;
}

function SizeChoice({ id, sizes, chosen, errors, hasNumbers }: SizeChoiceProps) {
  return (
    <fieldset className="mb-5" aria-describedby={describedBy(id)}>
      <legend className="mb-1 font-semibold">Sizes that it concerns</legend>
      <p id={`${id}-hint`} className="text-sm text-soft">
        {hasNumbers
          ? "Sizes with a corrected number are always included. Tick others that it concerns too."
          : "Choose none if it concerns all of them."}
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

function chosenSizes(field: SentField & { readonly errors?: string[] }) {
  return { chosen: sentTexts(field), errors: field.errors };
}
