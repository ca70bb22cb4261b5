import type { PatternDocument } from "@/engine/pattern";
import { usualMost } from "@/engine/places";
import {
  LEAST_OF_ALL,
  leastField,
  MOST_OF_ALL,
  mostField,
  SAME_FIELD,
  WANTED_OF_ALL,
  wantedField,
} from "./field-names";
import type { FieldFault } from "./read-typed";
import type { TypedListing } from "./schema";

/**
 * A new call's spots in every size: at least one report, and two testers, which is as many as it takes for one report in
 * spite of the usual drop-out (a test compares it with `usualInvitations`), and never more than three.
 */
export const USUAL_SPOTS = { least: 1, wanted: 2, most: usualMost(2) } as const;

/** The three numbers of a size, as a form holds them. */
export interface TypedSpots {
  readonly least: string;
  readonly wanted: string;
  readonly most: string;
}

/** The usual ones. */
export function usualSpots(): TypedSpots {
  const { least, wanted, most } = USUAL_SPOTS;
  return { least: String(least), wanted: String(wanted), most: String(most) };
}

/** The boxes for all sizes, and the fields of each that they stand for. */
const BOXES = [
  { box: LEAST_OF_ALL, fieldOf: leastField },
  { box: WANTED_OF_ALL, fieldOf: wantedField },
  { box: MOST_OF_ALL, fieldOf: mostField },
] as const;

type Sizes = readonly { readonly id: string }[];

/** Whether a form was sent with one number for all sizes. */
export function isSameForAll(sent: TypedListing): boolean {
  return sent[SAME_FIELD] === "on";
}

/** What was sent, with the numbers for all sizes in the fields of each. */
export function spreadOverSizes(sent: TypedListing, { sizes }: PatternDocument): TypedListing {
  if (!isSameForAll(sent)) return sent;
  const ofSizes = sizes.flatMap(({ id }) => BOXES.map(({ box, fieldOf }) => [fieldOf(id), sent[box] ?? ""]));
  return { ...sent, ...Object.fromEntries(ofSizes) };
}

/** The numbers that all sizes have in common; null where they differ or are empty. */
export function commonSpots(typed: TypedListing, sizes: Sizes): TypedSpots | null {
  const [first] = sizes;
  if (first === undefined) return null;
  const of = (id: string, fieldOf: (id: string) => string) => typed[fieldOf(id)] ?? "";
  const isCommon = sizes.every(({ id }) => BOXES.every(({ fieldOf }) => of(id, fieldOf) === of(first.id, fieldOf)));
  const wanted = of(first.id, wantedField);
  if (!isCommon || wanted === "") return null;
  return { least: of(first.id, leastField), wanted, most: of(first.id, mostField) };
}

/** Faults of the sizes' fields at the box in which they were typed, once each. */
export function faultsOfAll(faults: readonly FieldFault[], { sizes }: PatternDocument): readonly FieldFault[] {
  const box = new Map(sizes.flatMap(({ id }) => BOXES.map(({ box, fieldOf }) => [fieldOf(id), box])));
  const seen = new Set<string>();
  return faults.flatMap((fault) => {
    const field = box.get(fault.field) ?? fault.field;
    if (box.has(fault.field) && seen.has(field)) return [];
    seen.add(field);
    return [{ ...fault, field }];
  });
}
