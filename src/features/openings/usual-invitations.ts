import { invitationsFor, USUAL_CHANCE, USUAL_LOSS } from "@/engine/places";

/** How many to invite so that so many finish four times in five; null where a call cannot hold as many. */
export function usualInvitations(finishers: number): number | null {
  return invitationsFor({ finishers, loss: USUAL_LOSS, chance: USUAL_CHANCE });
}
