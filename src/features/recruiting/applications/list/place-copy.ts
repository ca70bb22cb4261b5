import type { InvitationState } from "@/features/calls/tester-status";

const WORDS: Readonly<Record<InvitationState, string>> = {
  invited: "is offered size",
  lapsed: "did not answer in time for size",
  accepted: "tests size",
  declined: "declined size",
  withdrawn: "is no longer offered size",
  stopped: "has stopped testing size",
};

/** "tests size L": the state of a spot. */
export function placeWords(state: InvitationState, sizeLabel: string): string {
  return `${WORDS[state]} ${sizeLabel}`;
}
