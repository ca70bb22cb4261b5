import type { BodyDifference } from "./fit-in-size";

/** Sizes that somebody would fit better than where she stands; `full`, or her own would be short without her. */
export interface PassedOver {
  readonly size: string;
  readonly because: "full" | "needed";
}

/** Why somebody stands where she stands. */
export type PlacedReason = { readonly differences: readonly BodyDifference[] } & (
  | { readonly kind: "locked" }
  /** No other size is within reach, accepted and has places. */
  | { readonly kind: "only" }
  /** The least misfit of all that are open to her: by her body alone, as her first choice, both or neither. */
  | { readonly kind: "best"; readonly isNearestBody: boolean; readonly isFirstChoice: boolean }
  | { readonly kind: "instead"; readonly passedOver: readonly PassedOver[] }
);

/** Why somebody waits. */
export type WaitingReason =
  | { readonly kind: "excluded" }
  | { readonly kind: "accepts-none" }
  /** No size has a place, for anybody. */
  | { readonly kind: "no-places" }
  /** The sizes that she could take have all their places given to others. */
  | { readonly kind: "full"; readonly sizes: readonly string[] }
  | {
      readonly kind: "none-open";
      /** Of the sizes with places that she accepts, all out of reach, the one with the least misfit. */
      readonly nearest: { readonly size: string; readonly differences: readonly BodyDifference[] } | null;
      /** Sizes with places within reach that she does not accept. */
      readonly refused: readonly string[];
      /** Sizes within reach that she accepts, where no tester is wanted. */
      readonly withoutPlaces: readonly string[];
    };

/** What it would take to have somebody in a size. */
export interface WouldTake {
  readonly differences: readonly BodyDifference[];
  readonly isWithinReach: boolean;
  readonly isAccepted: boolean;
  /** The size where she stands. */
  readonly standsIn: { readonly size: string; readonly isLocked: boolean; readonly wouldBeShort: boolean } | null;
}
