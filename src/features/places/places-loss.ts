import { invitationsFor, DEFAULT_CONFIDENCE, DEFAULT_DROPOUT_RATE } from "@/engine/places";

/** Fewer say too little of how many are usually lost. */
const LEAST_ON_RECORD = 10;
/** Where nobody at all has reported, no number of invitations would do. */
const MOST_LOSS = 0.9;

export interface Loss {
  /** Share of the invited who do not come to report. */
  readonly share: number;
  /** What it is from; null: what is usual. */
  readonly record: { readonly invited: number; readonly reported: number } | null;
}

/** The owner's own loss once enough were invited to calls that are closed, else the usual one. */
export function lossOf(record: { readonly invited: number; readonly reported: number }): Loss {
  if (record.invited < LEAST_ON_RECORD) return { share: DEFAULT_DROPOUT_RATE, record: null };
  return { share: Math.min(MOST_LOSS, 1 - record.reported / record.invited), record };
}

/** How many to invite to have so many finish four times in five. */
export function invitationsNeeded(finishers: number, { share }: Loss): number | null {
  return invitationsFor({ finishers, loss: share, chance: DEFAULT_CONFIDENCE });
}
