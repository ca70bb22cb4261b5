import { invitationsFor } from "@/engine/places";

/** Share of testers who drop out, until a designer's own record says otherwise; common practice, no source (design 4.3). */
const USUAL_LOSS = 0.3;
/** Four times in five. */
const SURENESS = 0.8;

/** How many to invite so that so many finish four times in five; null where a call cannot hold as many. */
export function usualInvitations(finishers: number): number | null {
  return invitationsFor({ finishers, loss: USUAL_LOSS, chance: SURENESS });
}
