import { invitationsFor, DEFAULT_CONFIDENCE, DEFAULT_DROPOUT_RATE } from "@/engine/places";

/** How many to invite so that so many finish four times in five; null where a call cannot hold as many. */
export function usualInvitations(finishers: number): number | null {
  return invitationsFor({ finishers, loss: DEFAULT_DROPOUT_RATE, chance: DEFAULT_CONFIDENCE });
}
