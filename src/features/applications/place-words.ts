import type { InvitationState } from "@/features/testers/schema";

const WORDS: Readonly<Record<InvitationState, string>> = {
  invited: "offered a place in size",
  lapsed: "did not answer in time for size",
  accepted: "tests size",
  declined: "declined size",
  withdrawn: "offer taken back of size",
  stopped: "had to stop size",
};

/** "tests size L": what became of a place. */
export function placeWords(state: InvitationState, sizeLabel: string): string {
  return `${WORDS[state]} ${sizeLabel}`;
}
