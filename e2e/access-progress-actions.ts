import { EDITS, type ActionRow } from "./access-action-row";

/** What designers do with the testers of a call, and when it ends. */
export const PROGRESS_ACTIONS: Readonly<Record<string, ActionRow>> = {
  "testing/progress/person-actions.ts saveOwnDays": {
    sends: ({ callId, ownTesterId: testerId }) => ({
      form: { callId, testerId, swatchBy: "2090-04-01", reportBy: "2090-06-01" },
    }),
    answers: EDITS,
  },
  "testing/progress/person-actions.ts giveCallDays": {
    sends: ({ callId, ownTesterId: testerId }) => ({ form: { callId, testerId } }),
    answers: EDITS,
  },
  // The editor ends it for both; then there is nothing left to end.
  "testing/progress/person-actions.ts endTheirTest": {
    sends: ({ callId, ownTesterId: testerId }) => ({ form: { callId, testerId } }),
    answers: EDITS,
  },
  "testing/progress/person-actions.ts letThemGoOn": {
    sends: ({ callId, ownTesterId: testerId }) => ({ form: { callId, testerId } }),
    answers: EDITS,
  },
  "testing/progress/spot-actions.ts openSpots": {
    sends: ({ callId, ownTesterId }) => ({ form: { callId, testerId: ownTesterId } }),
    answers: EDITS,
  },
  "testing/progress/spot-actions.ts giveSpotBack": {
    sends: ({ callId, ownTesterId }) => ({ form: { callId, testerId: ownTesterId } }),
    answers: EDITS,
  },
  "testing/progress/mail-actions.ts sendMailAgain": {
    sends: ({ callId, testerId }) => ({ form: { callId, testerId } }),
    answers: EDITS,
  },
  "testing/progress/mail-actions.ts sendLink": {
    sends: ({ callId, testerId }) => ({ form: { callId, testerId } }),
    answers: EDITS,
  },
  "testing/progress/progress-actions.ts saveNote": {
    sends: ({ callId, testerId }) => ({ form: { callId, testerId, note: "a note" } }),
    answers: EDITS,
  },
  "testing/progress/progress-actions.ts makeNewLink": {
    sends: ({ callId, invitedTesterId: testerId }) => ({ form: { callId, testerId } }),
    answers: EDITS,
  },
  // This tester has no account to leave.
  "testing/progress/progress-actions.ts giveNewWayIn": {
    sends: ({ callId, invitedTesterId: testerId }) => ({ form: { callId, testerId } }),
    answers: { ...EDITS, editor: "not-found", owner: "not-found" },
  },
  "testing/progress/progress-actions.ts withdrawInvitation": {
    sends: ({ callId, invitedTesterId: testerId }) => ({ form: { callId, testerId } }),
    answers: EDITS,
  },
  "testing/progress/progress-actions.ts extendInvitation": {
    sends: ({ callId, invitedTesterId: testerId }) => ({ form: { callId, testerId, days: "7" } }),
    answers: EDITS,
  },
  "testing/progress/progress-actions.ts close": { sends: ({ callId }) => ({ form: { callId } }), answers: EDITS },
  "testing/progress/progress-actions.ts openAgain": { sends: ({ callId }) => ({ form: { callId } }), answers: EDITS },
  // Twice the same makes one call.
  "testing/again/again-actions.ts startNext": {
    sends: ({ callId, planId: formKey }) => ({ form: { callId, formKey } }),
    answers: { ...EDITS, editor: "/calls/[id]/set-up", owner: "/calls/[id]/set-up" },
  },
  // None stands for the whole garment.
  "testing/again/again-actions.ts choosePieces": { sends: ({ callId }) => ({ form: { callId } }), answers: EDITS },
  // It follows no other test.
  "testing/again/again-actions.ts setCountsEarlier": {
    sends: ({ callId }) => ({ form: { callId, counts: "yes" } }),
    answers: { ...EDITS, editor: "not-found", owner: "not-found" },
  },
  "testing/again/again-actions.ts inviteEarlier": {
    sends: ({ callId, testerId }) => ({ form: { callId, testerId, days: "7" } }),
    answers: { ...EDITS, editor: "/calls/[id]/progress", owner: "/calls/[id]/progress" },
  },
  // A day to come, so that nothing is published.
  "testing/errata/publish-actions.ts publishVersion": {
    sends: ({ patternId }) => ({ form: { patternId, revisionNumber: "1", label: "1.0", day: "2090-01-01" } }),
    answers: EDITS,
  },
  "testing/errata/publish-actions.ts unpublishVersion": {
    sends: ({ patternId, correctionId: versionId }) => ({ form: { patternId, versionId } }),
    answers: EDITS,
  },
  // An open call is not archived: its page would be a closed one's.
  "testing/progress/progress-actions.ts archive": { sends: ({ callId }) => ({ form: { callId } }), answers: EDITS },
  "testing/progress/progress-actions.ts restore": { sends: ({ callId }) => ({ form: { callId } }), answers: EDITS },
  // No such size: refused once it is known who asks.
  "testing/progress/progress-actions.ts addTester": {
    sends: ({ callId }) => ({ form: { callId, name: "Bea", email: "", size: "none", days: "7" } }),
    answers: EDITS,
  },
};
