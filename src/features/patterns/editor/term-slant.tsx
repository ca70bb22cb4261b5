"use client";

import type { PathPart } from "@/engine/pattern";
import { removeItem, replaceItem } from "./list-items";
import { NEW_LINE, type DraftFlat, type DraftSlant } from "./term-choices";
import { FlatFields, TimesFields } from "./term-fields";

interface SlantFieldsProps {
  readonly at: readonly PathPart[];
  readonly name: string;
  readonly term: DraftSlant;
  readonly onTerm: (term: DraftSlant, field: string | null) => void;
}

const SIDES = [
  { side: "across", label: "Across" },
  { side: "along", label: "Along" },
] as const;

/** A diagonal from corner to corner: a distance across and a distance along. */
export function SlantFields({ at, name, term, onTerm }: SlantFieldsProps) {
  return (
    <div className="order-2 min-w-0 flex-1 basis-full sm:order-none sm:basis-0">
      <div className="flex flex-wrap items-start gap-x-2">
        <TimesFields
          at={at}
          name={name}
          times={term.times}
          onTimes={(times, field) => onTerm({ ...term, times }, field)}
        />
        <span className="py-2.5">the diagonal, corner to corner, of</span>
      </div>
      <div className="mt-2 grid gap-3 border-l-2 border-line pl-3">
        {SIDES.map(({ side, label }) => (
          <SlantSide
            key={side}
            at={[...at, "diagonal", side]}
            name={`${name}, ${side}`}
            label={label}
            flats={term.diagonal[side]}
            onFlats={(flats, field) =>
              onTerm({ ...term, diagonal: { ...term.diagonal, [side]: flats } }, field && `diagonal.${side}${field}`)
            }
          />
        ))}
      </div>
    </div>
  );
}

interface SlantSideProps {
  readonly at: readonly PathPart[];
  readonly name: string;
  readonly label: string;
  readonly flats: readonly DraftFlat[];
  readonly onFlats: (flats: readonly DraftFlat[], field: string | null) => void;
}

function SlantSide({ at, name, label, flats, onFlats }: SlantSideProps) {
  return (
    <div role="group" aria-label={name}>
      <p className="text-sm text-soft">{label}</p>
      <ol className="grid gap-2">
        {flats.map((flat, index) => (
          <li key={index} className="flex flex-wrap items-start gap-x-1 gap-y-2 sm:flex-nowrap">
            <FlatFields
              at={[...at, index]}
              name={`${name} ${index + 1}`}
              term={flat}
              onTerm={(next, field) => onFlats(replaceItem(flats, index, next), field && `[${index}].${field}`)}
            />
            <button
              type="button"
              className="order-1 ml-auto min-h-11 min-w-11 rounded-md text-soft sm:order-none hover:bg-band hover:text-ink"
              aria-label={`Remove ${name} ${index + 1}`}
              onClick={() => onFlats(removeItem(flats, index), null)}
            >
              ✕
            </button>
          </li>
        ))}
      </ol>
      <button
        type="button"
        className="text-link min-h-8 text-sm"
        onClick={() => onFlats([...flats, NEW_LINE], null)}
        aria-label={`Add to ${name}`}
      >
        + {flats.length === 0 ? "something" : "and"} {label.toLowerCase()}
      </button>
    </div>
  );
}
