import type { BodyDifference } from "./fit-in-size";

/** A size that would fit an applicant better than the assigned one: it is full, or the assigned size would fall below its minimum without them. */
export interface PassedOver {
  readonly size: string;
  readonly because: "full" | "needed";
}

/** Why an applicant was assigned a size. */
export type PlacedReason = { readonly differences: readonly BodyDifference[] } & (
  | { readonly kind: "locked" }
  /** No other size is within reach, accepted and has spots. */
  | { readonly kind: "only" }
  /** The smallest misfit of all sizes open to the applicant: nearest by body, their first choice, both or neither. */
  | { readonly kind: "best"; readonly isNearestBody: boolean; readonly isFirstChoice: boolean }
  | { readonly kind: "instead"; readonly passedOver: readonly PassedOver[] }
);

/** Why an applicant is on the waiting list. */
export type WaitingReason =
  | { readonly kind: "excluded" }
  | { readonly kind: "accepts-none" }
  /** No size has a spot for anybody. */
  | { readonly kind: "no-places" }
  /** All spots in the sizes open to the applicant are assigned to others. */
  | { readonly kind: "full"; readonly sizes: readonly string[] }
  | {
      readonly kind: "none-open";
      /** Of the accepted sizes with spots, all out of reach, the one with the smallest misfit. */
      readonly nearest: { readonly size: string; readonly differences: readonly BodyDifference[] } | null;
      /** Sizes with spots within reach that the applicant does not accept. */
      readonly refused: readonly string[];
      /** Accepted sizes within reach, in which no tester is needed. */
      readonly withoutPlaces: readonly string[];
    };

/** What would have to change for an applicant to get a size. */
export interface WouldTake {
  readonly differences: readonly BodyDifference[];
  readonly isWithinReach: boolean;
  readonly isAccepted: boolean;
  /** The size assigned at present. */
  readonly standsIn: { readonly size: string; readonly isLocked: boolean; readonly wouldBeShort: boolean } | null;
}
