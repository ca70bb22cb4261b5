import { invitationsFor, DEFAULT_CONFIDENCE, DEFAULT_DROPOUT_RATE } from "@/engine/places";

/** How many to invite so that the given number finish with 80% probability; null if a call cannot hold as many. */
export function usualInvitations(finishers: number): number | null {
  return invitationsFor({ finishers, loss: DEFAULT_DROPOUT_RATE, chance: DEFAULT_CONFIDENCE });
}
