"use client";

import { useState } from "react";
import { FieldErrors, TextInput } from "@/ui/field";
import { invitationsWithin } from "@/engine/places";
import {
  LEAST_OF_ALL,
  leastField,
  MOST_OF_ALL,
  mostField,
  SAME_FIELD,
  WANTED_OF_ALL,
  wantedField,
} from "../field-names";
import type { ListingFormState } from "./listing-form-state";
import { Theirs } from "./typed-field";

export interface SpotAdvice {
  /** Testers a size who find 8 in 10 of such errors; null if no number is enough. */
  readonly needed: number | null;
  /** Share of errors of 1½ tolerances that are found with 1 and with 2 testers in each size; null where it cannot be calculated. */
  readonly powers: readonly (number | null)[];
  /** Share of testers who never report. */
  readonly dropoutRate: number;
  /** How many to invite, by how many should finish; null if a call cannot hold as many. */
  readonly invitations: readonly (number | null)[];
}

interface SpotFieldsProps {
  readonly state: ListingFormState;
  readonly sizes: readonly { readonly id: string; readonly label: string; readonly made: string }[];
  readonly advice: SpotAdvice;
}

/** The minimum, the spots and the most testers: for all sizes in one box, or of each, with how many to invite. */
export function SpotFields({ state, sizes, advice }: SpotFieldsProps) {
  const { common } = state;
  return (
    <>
      <SpotWords advice={advice} />
      <label className="mb-3 flex min-h-11 cursor-pointer items-center gap-3">
        <input
          type="checkbox"
          name={SAME_FIELD}
          value="on"
          defaultChecked={common !== null}
          className="size-5 shrink-0 accent-thread"
        />
        The same for all sizes
      </label>
      <div className="spots-of-all">
        <SizeSpots
          state={state}
          size={{ label: "every size", made: "" }}
          legend="Every size"
          fields={[LEAST_OF_ALL, WANTED_OF_ALL, MOST_OF_ALL]}
          invitations={advice.invitations}
        />
      </div>
      <div className="spots-by-size">
        <ul className="grid gap-x-8 gap-y-4 lg:grid-cols-2">
          {sizes.map((size) => (
            <li key={size.id} className="border-t border-line pt-3">
              <SizeSpots
                state={state}
                size={size}
                fields={[leastField(size.id), wantedField(size.id), mostField(size.id)]}
                invitations={advice.invitations}
              />
            </li>
          ))}
        </ul>
      </div>
    </>
  );
}

function SizeSpots({
  state,
  size: { label, made },
  legend = label,
  fields: [leastName, wantedName, mostName],
  invitations,
}: Pick<SpotFieldsProps, "state"> & {
  readonly size: { readonly label: string; readonly made: string };
  /** Left out: the size's label. */
  readonly legend?: string;
  /** Names of the fields of the minimum, of the spots and of the most. */
  readonly fields: readonly [string, string, string];
  readonly invitations: SpotAdvice["invitations"];
}) {
  const [least, wanted, most] = [state.field(leastName), state.field(wantedName), state.field(mostName)];
  const [typedLeast, setLeast] = useState(least.control.defaultValue);
  const [typedMost, setMost] = useState(most.control.defaultValue);
  return (
    <fieldset>
      <legend className="float-left w-full wrap-anywhere">
        <span className="font-serif text-lg font-semibold">{legend}</span>{" "}
        <span className="text-sm text-soft">{made}</span>
      </legend>
      <div className="clear-both grid grid-cols-3 gap-x-3 sm:grid-cols-[6.5rem_6.5rem_6.5rem_1fr] sm:gap-x-4">
        {[
          { words: "Minimum", spot: least, onText: setLeast },
          { words: "Spots", spot: wanted, onText: undefined },
          { words: "At most", spot: most, onText: setMost },
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
        <p id={`${least.id}-hint`} aria-live="polite" className="self-end pb-2.5 text-sm text-soft max-sm:col-span-3">
          {inviteWords({ least: typedLeast, most: typedMost }, invitations)}
        </p>
      </div>
      <FieldErrors id={least.id} errors={least.errors} />
      <FieldErrors id={wanted.id} errors={wanted.errors} />
      <FieldErrors id={most.id} errors={most.errors} />
    </fieldset>
  );
}

/** What one, two and three testers in a size mean; said once, here. */
function SpotWords({ advice: { needed, powers, dropoutRate } }: Pick<SpotFieldsProps, "advice">) {
  const [one, two] = powers;
  const without = (spots: number) => shareWords(dropoutRate ** spots);
  return (
    <div className="mb-5 grid max-w-3xl gap-2 text-soft">
      <p>
        The minimum is filled first in every size; where too few people apply, the smallest and the largest size come
        before those between.
        {one == null || two == null
          ? ""
          : ` With one report a size, ${shareWords(one)} measurements are settled: clearly as planned, or clearly different. With two, ${shareWords(two)} are${needed === null || needed <= 2 ? "" : `; settling 8 in 10 takes ${needed}`}. Volunteers usually fill 1 to 3 spots a size.`}{" "}
        Sizes are assigned up to the spots; “at most” is as far as you can go by hand.
      </p>
      <p>
        {`About ${shareWords(dropoutRate)} testers drop out. A size with one tester ends without a report in ${without(1)} cases, with two in ${without(2)}, with three in ${without(3)}. A size with few testers or none never holds up the others; its numbers are just less certain.`}
      </p>
    </div>
  );
}

/** `3 in 10`, `9 in 100`. */
function shareWords(share: number): string {
  const tenths = Math.round(share * 10);
  return Math.abs(share * 10 - tenths) < 0.05 ? `${tenths} in 10` : `${Math.round(share * 100)} in 100`;
}

/** How many to invite for the minimum to finish, and never more than the most. */
function inviteWords(
  typed: { readonly least: string; readonly most: string },
  invitations: SpotAdvice["invitations"],
): string {
  const least = Number(typed.least.trim() === "" ? "0" : typed.least);
  const needed = invitations[least];
  if (least === 0 || needed == null) return "";
  const most = typed.most.trim() === "" ? needed : Number(typed.most);
  const { invite, isEnough } = invitationsWithin(needed, most);
  if (isEnough || Number.isNaN(most)) return `For ${least} to finish, invite ${needed}.`;
  return `Invite ${invite}, the most you set; that may be too few for ${least} to finish.`;
}
