import { randomUUID } from "node:crypto";
import { freePlace, pastedReports, refusedPattern, refusedTemplate } from "./access-forms";
import { EDITS, type ActionAnswer, type ActionRow } from "./access-action-row";
import { ACCOUNT_ACTIONS } from "./access-account-actions";
import { PROGRESS_ACTIONS } from "./access-progress-actions";
import { TESTER_ACTIONS } from "./access-tester-actions";
import { everyone, signedIn, type Kind } from "./access-world";

/** For the pattern's owner alone. */
const OWNS: Readonly<Record<Kind, ActionAnswer>> = { ...EDITS, editor: "not-allowed" };

/** Every action of the features, by file and name. */
export const ACTIONS: Readonly<Record<string, ActionRow>> = {
  ...ACCOUNT_ACTIONS,
  "results/mistakes/decision-actions.ts decideItem": {
    sends: ({ callId }) => ({
      form: { callId, tester: "tester-1", part: "readings", position: "0", decision: "keep" },
    }),
    answers: EDITS,
  },
  "results/mistakes/decision-actions.ts putValueInPlace": {
    sends: ({ callId }) => ({
      form: { callId, tester: "tester-1", position: "0", value: "50", reason: "Measured flat" },
    }),
    answers: EDITS,
  },
  "results/changes/plan-actions.ts planChanges": {
    sends: ({ callId }) => ({ form: { callId, baseNumber: "1", key: randomUUID(), "take.0": "leave" } }),
    answers: EDITS,
  },
  // Of a revision that nobody has saved.
  "results/changes/plan-actions.ts planCorrection": {
    sends: ({ callId }) => ({
      form: { callId, baseNumber: "9", key: randomUUID(), cell: "small.bust", reason: "" },
    }),
    answers: EDITS,
  },
  "results/changes/plan-actions.ts savePlannedRevision": {
    sends: ({ callId, planId }) => ({ form: { callId, planId, reason: "" } }),
    answers: EDITS,
  },
  "results/learning/learning-actions.ts setUsesPrior": {
    sends: ({ callId }) => ({ form: { callId, uses: "yes" } }),
    answers: EDITS,
  },
  "recruiting/places/no-spot-actions.ts tellOthers": { sends: ({ callId }) => ({ form: { callId } }), answers: EDITS },
  "recruiting/applications/apply/apply-actions.ts apply": {
    sends: ({ callId }) => ({ form: { callId, name: "" } }),
    answers: everyone<ActionAnswer>("done"),
  },
  "recruiting/applications/own/own-actions.ts withdrawOwn": {
    sends: ({ link }) => ({ form: { link } }),
    answers: everyone<ActionAnswer>("done"),
  },
  "recruiting/applications/own/own-actions.ts takeUpOwn": {
    sends: ({ link }) => ({ form: { link } }),
    answers: everyone<ActionAnswer>("done"),
  },
  // Whoever has the link may; the first to do it leaves nothing for the others.
  "recruiting/applications/own/own-actions.ts deleteOwn": {
    sends: ({ link }) => ({ form: { link } }),
    answers: { ...everyone<ActionAnswer>("not-found"), visitor: "/applications/deleted" },
  },
  "recruiting/applications/list/decision-actions.ts decideOnSeveral": {
    sends: ({ callId, applicationId }) => ({ form: { callId, applicationId, decision: "maybe" } }),
    answers: EDITS,
  },
  "recruiting/applications/list/decision-actions.ts decideOnApplication": {
    sends: ({ callId, applicationId }) => ({ form: { callId, applicationId, decision: "yes" } }),
    answers: EDITS,
  },
  "recruiting/applications/list/decision-actions.ts sendApplicationLink": {
    sends: ({ callId, applicationId }) => ({ form: { callId, applicationId } }),
    answers: EDITS,
  },
  "patterns/grading/actions.ts askGrading": {
    sends: ({ patternId }) => ({ values: [patternId, { document: {}, idempotencyKey: randomUUID() }] }),
    answers: EDITS,
  },
  "patterns/grading/actions.ts stopGrading": {
    sends: ({ patternId, gradingId }) => ({ values: [patternId, gradingId] }),
    answers: { ...EDITS, editor: "not-found" },
  },
  "recruiting/listing/set-up/listing-actions.ts addListing": {
    sends: ({ callId }) => ({ form: { callId, timeZone: "" } }),
    answers: EDITS,
  },
  "recruiting/listing/set-up/listing-actions.ts openNewCall": {
    sends: ({ patternId }) => ({ form: { patternId, formKey: randomUUID(), timeZone: "" } }),
    answers: { ...EDITS, editor: "/calls/[id]/set-up", owner: "/calls/[id]/set-up" },
  },
  "recruiting/listing/set-up/listing-actions.ts saveListing": {
    sends: ({ draftCallId }) => ({
      form: { callId: draftCallId, version: "1", intent: "save", title: "Draft" },
    }),
    answers: EDITS,
  },
  "patterns/actions.ts saveDraftEdits": {
    sends: ({ patternId }) => ({ values: [patternId, { content: null, version: 0, baseNumber: 1 }] }),
    answers: EDITS,
  },
  "patterns/actions.ts discardDraftEdits": { sends: ({ patternId }) => ({ values: [patternId, 1] }), answers: EDITS },
  "patterns/actions.ts discardConflictingDraft": {
    sends: ({ patternId }) => ({ values: [patternId] }),
    answers: EDITS,
  },
  "patterns/actions.ts saveAsRevision": {
    sends: ({ patternId }) => ({ values: [patternId, { content: null, version: 0, baseNumber: 1, reason: "Why" }] }),
    answers: EDITS,
  },
  "patterns/new/template-actions.ts newFromTemplate": {
    sends: () => ({ form: refusedTemplate() }),
    answers: signedIn<ActionAnswer>("signed-out", "done"),
  },
  "patterns/new/new-pattern-actions.ts newPattern": {
    sends: () => ({ form: refusedPattern() }),
    answers: signedIn<ActionAnswer>("signed-out", "done"),
  },
  "patterns/correction-actions.ts saveCorrection": {
    sends: ({ patternId, callId }) => ({
      form: { patternId, callId, size: "small", measurement: "bust", baseNumber: "1", reason: "Why" },
    }),
    answers: EDITS,
  },
  // Nothing waits for it, which its domain says to those who may.
  "patterns/follow-up/follow-up-actions.ts signOff": {
    sends: ({ patternId }) => ({ form: { patternId, sizes: "small", checkedBy: "Ada Marsh" } }),
    answers: EDITS,
  },
  "patterns/follow-up/follow-up-actions.ts withdrawSigned": {
    sends: ({ patternId }) => ({ form: { patternId, sizes: "small", revisionNumber: "1" } }),
    answers: EDITS,
  },
  "patterns/follow-up/follow-up-actions.ts reopen": {
    sends: ({ patternId }) => ({ form: { patternId, fixId: randomUUID() } }),
    answers: EDITS,
  },
  "patterns/follow-up/follow-up-actions.ts tickOff": {
    sends: ({ patternId }) => ({ form: { patternId, fixId: randomUUID() } }),
    answers: EDITS,
  },
  // Good for one person: another designer takes it, and the others have a part already.
  "patterns/people/invitation-actions.ts accept": {
    sends: ({ token }) => ({ form: { token } }),
    answers: { ...signedIn<ActionAnswer>("signed-out", "done"), "another designer": "/patterns/[id]" },
  },
  "patterns/people/invitation-actions.ts invite": {
    sends: ({ patternId }) => ({ form: { patternId, role: "viewer", note: "" } }),
    answers: OWNS,
  },
  "patterns/people/invitation-actions.ts withdraw": {
    sends: ({ patternId, invitationId }) => ({ form: { patternId, invitationId } }),
    answers: OWNS,
  },
  // One of its tests is open.
  "patterns/owner/owner-actions.ts archive": { sends: ({ patternId }) => ({ form: { patternId } }), answers: OWNS },
  "patterns/owner/owner-actions.ts bringBack": { sends: ({ patternId }) => ({ form: { patternId } }), answers: OWNS },
  "patterns/owner/owner-actions.ts duplicate": {
    sends: ({ patternId }) => ({ form: { patternId, formKey: randomUUID() } }),
    answers: { ...OWNS, owner: "/patterns/[id]" },
  },
  "patterns/people/people-actions.ts changeHelper": {
    sends: ({ patternId, people }) => ({
      form: { patternId, accountId: people.viewer?.accountId ?? "", role: "viewer" },
    }),
    answers: OWNS,
  },
  // A helper leaves, the owner cannot.
  "patterns/people/people-actions.ts leave": {
    sends: ({ patternId }) => ({ form: { patternId } }),
    answers: { ...EDITS, viewer: "/patterns", editor: "/patterns" },
  },
  "patterns/people/people-actions.ts removeHelper": {
    sends: ({ patternId, people }) => ({ form: { patternId, accountId: people.viewer?.accountId ?? "" } }),
    answers: OWNS,
  },
  "patterns/import/paste-actions.ts makePastedPattern": {
    sends: () => ({ values: [{ text: "", choices: {}, confirmed: false, tableKey: randomUUID() }] }),
    answers: signedIn<ActionAnswer>("signed-out", "done"),
  },
  "recruiting/places/actions.ts fillPlaceAgain": { sends: (world) => ({ form: freePlace(world) }), answers: EDITS },
  "recruiting/places/actions.ts sendInvitations": {
    sends: ({ callId }) => ({ form: { callId, saw: "nobody", endsOn: "2090-01-01" } }),
    answers: { ...EDITS, editor: "/calls/[id]/sizes", owner: "/calls/[id]/sizes" },
  },
  "recruiting/places/actions.ts inviteSelected": {
    sends: ({ callId, applicationId }) => ({ form: { callId, applicationId, endsOn: "2090-01-01" } }),
    answers: EDITS,
  },
  "recruiting/places/actions.ts placePerson": {
    sends: ({ callId, applicationId }) => ({ form: { callId, applicationId, kind: "leave-waiting" } }),
    answers: EDITS,
  },
  "recruiting/places/actions.ts solvePlaces": {
    sends: ({ callId }) => ({ form: { callId, with: "yes" } }),
    answers: EDITS,
  },
  "testing/report/import/document-actions.ts importDocument": {
    sends: () => ({ values: [{ text: "{}", title: "", formKey: randomUUID() }] }),
    answers: signedIn<ActionAnswer>("signed-out", "done"),
  },
  "testing/corrections/correction-actions.ts publish": {
    sends: ({ callId }) => ({ form: { callId, formKey: randomUUID(), text: "Row 1: work 4 stitches." } }),
    answers: EDITS,
  },
  "testing/questions/actions.ts answer": {
    sends: ({ callId }) => ({ form: { callId, questions: randomUUID(), seenAt: "", answer: "Yes." } }),
    answers: EDITS,
  },
  "testing/questions/actions.ts ask": {
    sends: ({ testerId }) => ({ form: { testerId, place: "0-0", formKey: randomUUID(), asks: "Why?" } }),
    answers: everyone<ActionAnswer>("not-found"),
  },
  "testing/questions/actions.ts takeBack": {
    sends: ({ testerId }) => ({ form: { testerId, what: "question", id: randomUUID() } }),
    answers: everyone<ActionAnswer>("not-found"),
  },
  "testing/questions/actions.ts tell": {
    sends: ({ testerId }) => ({ form: { testerId, place: "0-0", formKey: randomUUID(), happened: "It", did: "" } }),
    answers: everyone<ActionAnswer>("not-found"),
  },
  // A tester's own: no part in the pattern lets anybody write in their name.
  "testing/report/draft-actions.ts saveReportFields": {
    sends: ({ testerId }) => ({ values: [testerId, [{ field: "hours", was: "", becomes: "12" }]] }),
    answers: everyone<ActionAnswer>("not-found"),
  },
  "testing/report/draft-actions.ts saveReportForm": {
    sends: ({ testerId }) => ({ form: { testerId, was: "{}", hours: "12" } }),
    answers: everyone<ActionAnswer>("not-found"),
  },
  "testing/report/import/paste-actions.ts addPastedReports": {
    sends: (world) => ({ values: [pastedReports(world)] }),
    answers: EDITS,
  },
  ...PROGRESS_ACTIONS,
  ...TESTER_ACTIONS,
  "testing/report/send/send-actions.ts sendSwatchForm": {
    sends: ({ testerId }) => ({ form: { testerId, version: "1", plan: "start", key: randomUUID() } }),
    answers: everyone<ActionAnswer>("not-found"),
  },
  "testing/report/send/send-actions.ts sendReportForm": {
    sends: ({ testerId }) => ({ form: { testerId, version: "1" } }),
    answers: everyone<ActionAnswer>("not-found"),
  },
};
