"use client";

import { useState } from "react";
import { FieldErrors, TextInput } from "@/ui/field";
import { leastField, wantedField } from "../field-names";
import type { ListingFormState } from "./listing-form-state";
import { Theirs } from "./typed-field";

export interface SpotAdvice {
  /** Testers per size who find an error of 1½ tolerances with 80% probability; null if no number is enough. */
  readonly needed: number | null;
  /** How many to invite, by how many should finish; null if a call cannot hold as many. */
  readonly invitations: readonly (number | null)[];
}

interface SpotFieldsProps {
  readonly state: ListingFormState;
  readonly sizes: readonly { readonly id: string; readonly label: string; readonly made: string }[];
  readonly advice: SpotAdvice;
}

/** The minimum and the number of spots of each size, with how many to invite. */
export function SpotFields({ state, sizes, advice }: SpotFieldsProps) {
  return (
    <>
      <p className="mb-5 max-w-3xl text-soft">{adviceWords(advice)}</p>
      <ul className="grid gap-x-8 gap-y-4 lg:grid-cols-2">
        {sizes.map((size) => (
          <li key={size.id} className="border-t border-line pt-3">
            <SizeSpots state={state} size={size} invitations={advice.invitations} />
          </li>
        ))}
      </ul>
    </>
  );
}

function SizeSpots({
  state,
  size: { id, label, made },
  invitations,
}: Pick<SpotFieldsProps, "state"> & {
  readonly size: SpotFieldsProps["sizes"][number];
  readonly invitations: SpotAdvice["invitations"];
}) {
  const [least, wanted] = [state.field(leastField(id)), state.field(wantedField(id))];
  const [typedLeast, setLeast] = useState(least.control.defaultValue);
  return (
    <fieldset>
      <legend className="float-left w-full wrap-anywhere">
        <span className="font-serif text-lg font-semibold">{label}</span>{" "}
        <span className="text-sm text-soft">{made}</span>
      </legend>
      <div className="clear-both grid grid-cols-[1fr_1fr] gap-x-4 sm:grid-cols-[8rem_8rem_1fr]">
        {[
          { words: "Minimum", spot: least, onText: setLeast },
          { words: "Spots", spot: wanted, onText: undefined },
        ].map(({ words, spot, onText }) => (
          <div key={words}>
            <label htmlFor={spot.id} className="mb-1 block text-sm font-semibold">
              {words}
              <span className="sr-only"> in {label}</span>
            </label>
            <TextInput
              {...spot.control}
              inputMode="numeric"
              autoComplete="off"
              className="numbers"
              onChange={onText && (({ currentTarget }) => onText(currentTarget.value))}
            />
            {spot.theirs === null ? null : <Theirs text={spot.theirs} />}
          </div>
        ))}
        <p id={`${least.id}-hint`} aria-live="polite" className="self-end pb-2.5 text-sm text-soft max-sm:col-span-2">
          {inviteWords(typedLeast, invitations)}
        </p>
      </div>
      <FieldErrors id={least.id} errors={least.errors} />
      <FieldErrors id={wanted.id} errors={wanted.errors} />
    </fieldset>
  );
}

function adviceWords({ needed, invitations }: SpotAdvice): string {
  if (needed === null)
    return "The number of testers needed per size cannot be calculated for this pattern: it has no measurements yet, or they would need more testers than a test can have.";
  const invite = invitations[needed] ?? needed;
  const testers = needed === 1 ? "1 tester" : `${needed} testers`;
  return `With ${testers} reporting in each size, an error of 1½ tolerances is found in 4 of 5 cases. About 3 in 10 testers drop out, so invite ${invite} for ${needed} to finish.`;
}

function inviteWords(typed: string, invitations: SpotAdvice["invitations"]): string {
  const least = Number(typed.trim() === "" ? "0" : typed);
  const invite = invitations[least];
  if (least === 0 || invite == null) return "";
  return `For ${least} to finish, invite ${invite}.`;
}
