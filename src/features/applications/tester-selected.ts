/** What is selected of a tester to say what became of her place. */
export const TESTER_SELECTED = {
  ...{ id: true, size: true, invitationEndsAt: true, acceptedAt: true, declinedAt: true },
  ...{ withdrawnAt: true, stoppedAt: true },
} as const;
