import { chanceOfFinishers, invitationsFor, DEFAULT_CONFIDENCE, DEFAULT_DROPOUT_RATE } from "@/engine/places";

/** Fewer invitations say too little about the drop-out rate. */
const LEAST_ON_RECORD = 10;
/** Where nobody at all reported, no number of invitations would be enough. */
const MOST_LOSS = 0.9;

export interface Loss {
  /** Share of the invited who never report. */
  readonly share: number;
  /** The data behind it; null: the default rate. */
  readonly record: { readonly invited: number; readonly reported: number } | null;
}

/** The owner's own drop-out rate once enough people were invited to closed calls, else the default. */
export function lossOf(record: { readonly invited: number; readonly reported: number }): Loss {
  if (record.invited < LEAST_ON_RECORD) return { share: DEFAULT_DROPOUT_RATE, record: null };
  return { share: Math.min(MOST_LOSS, 1 - record.reported / record.invited), record };
}

/** How many to invite so that a number of people finish with a probability of 80 %. */
export function invitationsNeeded(finishers: number, { share }: Loss): number | null {
  return invitationsFor({ finishers, loss: share, chance: DEFAULT_CONFIDENCE });
}

/** The probability that so many of the invited finish. */
export function chanceToFinish(
  given: { readonly invited: number; readonly finishers: number },
  { share }: Loss,
): number {
  return chanceOfFinishers({ ...given, loss: share });
}
