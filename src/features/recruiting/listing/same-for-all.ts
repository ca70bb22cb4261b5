import type { PatternDocument } from "@/engine/pattern";
import { LEAST_OF_ALL, leastField, SAME_FIELD, WANTED_OF_ALL, wantedField } from "./field-names";
import type { FieldFault } from "./read-typed";
import type { TypedListing } from "./schema";

/**
 * A new call's spots in every size: at least one report, and two testers, which is as many as it takes for one report in
 * spite of the usual drop-out (a test compares it with `usualInvitations`).
 */
export const USUAL_SPOTS = { least: 1, wanted: 2 } as const;

/** The same, as a form holds it. */
export function usualSpots(): { readonly least: string; readonly wanted: string } {
  return { least: String(USUAL_SPOTS.least), wanted: String(USUAL_SPOTS.wanted) };
}

type Sizes = readonly { readonly id: string }[];

/** Whether a form was sent with one number for all sizes. */
export function isSameForAll(sent: TypedListing): boolean {
  return sent[SAME_FIELD] === "on";
}

/** What was sent, with the numbers for all sizes in the fields of each. */
export function spreadOverSizes(sent: TypedListing, { sizes }: PatternDocument): TypedListing {
  if (!isSameForAll(sent)) return sent;
  const [least, wanted] = [sent[LEAST_OF_ALL] ?? "", sent[WANTED_OF_ALL] ?? ""];
  const ofSizes = sizes.flatMap(({ id }) => [
    [leastField(id), least],
    [wantedField(id), wanted],
  ]);
  return { ...sent, ...Object.fromEntries(ofSizes) };
}

/** The numbers that all sizes have in common; null where they differ or are empty. */
export function commonSpots(typed: TypedListing, sizes: Sizes): { least: string; wanted: string } | null {
  const [first] = sizes;
  if (first === undefined) return null;
  const [least, wanted] = [typed[leastField(first.id)] ?? "", typed[wantedField(first.id)] ?? ""];
  const isCommon = sizes.every(
    ({ id }) => (typed[leastField(id)] ?? "") === least && (typed[wantedField(id)] ?? "") === wanted,
  );
  return isCommon && wanted !== "" ? { least, wanted } : null;
}

/** Faults of the sizes' fields at the box in which they were typed, once each. */
export function faultsOfAll(faults: readonly FieldFault[], { sizes }: PatternDocument): readonly FieldFault[] {
  const box = new Map(
    sizes.flatMap(({ id }) => [
      [leastField(id), LEAST_OF_ALL],
      [wantedField(id), WANTED_OF_ALL],
    ]),
  );
  const seen = new Set<string>();
  return faults.flatMap((fault) => {
    const field = box.get(fault.field) ?? fault.field;
    if (box.has(fault.field) && seen.has(field)) return [];
    seen.add(field);
    return [{ ...fault, field }];
  });
}
