/** The columns that decide the state of a tester's spot. */
export const TESTER_SELECTED = {
  ...{ id: true, size: true, invitationExpiresAt: true, acceptedAt: true, declinedAt: true },
  ...{ withdrawnAt: true, stoppedAt: true },
} as const;
