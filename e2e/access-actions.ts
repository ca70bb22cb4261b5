import { randomUUID } from "node:crypto";
import { freePlace, pastedReports, refusedPattern, WRONG } from "./access-forms";
import { everyone, signedIn, type Kind, type World } from "./access-world";

/**
 * What an action answers: "done" (whatever its domain says), a known failure's code, or the path that it leads on to, with
 * [id] for an id in it.
 */
export type ActionAnswer = "done" | "signed-out" | "not-found" | "not-allowed" | `/${string}`;

interface ActionRow {
  /** What it is handed: values, or the fields of a form. */
  readonly sends: (world: World) => { values: unknown[] } | { form: Readonly<Record<string, string>> };
  readonly answers: Readonly<Record<Kind, ActionAnswer>>;
}

/** For those with a part in the pattern that lets them change it. */
const EDITS: Readonly<Record<Kind, ActionAnswer>> = {
  visitor: "signed-out",
  "another designer": "not-found",
  viewer: "not-allowed",
  editor: "done",
  owner: "done",
};

/** For the pattern's owner alone. */
const OWNS: Readonly<Record<Kind, ActionAnswer>> = { ...EDITS, editor: "not-allowed" };

/** For the tester herself, who is "another designer". */
const TESTS: Readonly<Record<Kind, ActionAnswer>> = {
  ...everyone<ActionAnswer>("not-found"),
  "another designer": "done",
};

/** Every action of the features, by file and name. */
export const ACTIONS: Readonly<Record<string, ActionRow>> = {
  "accounts/actions.ts signIn": { sends: () => ({ form: WRONG }), answers: everyone<ActionAnswer>("done") },
  "accounts/actions.ts signUp": {
    sends: () => ({ form: { name: "", ...WRONG } }),
    answers: everyone<ActionAnswer>("done"),
  },
  "accounts/actions.ts saveAbout": {
    sends: () => ({ form: { name: "Another Name", unit: "in" } }),
    answers: signedIn<ActionAnswer>("signed-out", "done"),
  },
  "accounts/actions.ts savePassword": {
    sends: () => ({ form: { password: WRONG.password, newPassword: "another long password" } }),
    answers: signedIn<ActionAnswer>("signed-out", "done"),
  },
  "accounts/actions.ts signOut": { sends: () => ({ values: [] }), answers: everyone<ActionAnswer>("/sign-in") },
  "accounts/actions.ts signOutEverywhere": {
    sends: () => ({ values: [] }),
    answers: everyone<ActionAnswer>("/sign-in"),
  },
  "analyses/actions.ts decideItem": {
    sends: ({ callId }) => ({
      form: { callId, tester: "tester-1", part: "readings", position: "0", decision: "keep" },
    }),
    answers: EDITS,
  },
  "analyses/plan-actions.ts planChanges": {
    sends: ({ callId }) => ({ form: { callId, baseNumber: "1", key: randomUUID(), "take.0": "leave" } }),
    answers: EDITS,
  },
  "analyses/plan-actions.ts savePlannedRevision": {
    sends: ({ callId, planId }) => ({ form: { callId, planId, reason: "" } }),
    answers: EDITS,
  },
  "applications/actions.ts apply": {
    sends: ({ callId }) => ({ form: { callId, name: "" } }),
    answers: everyone<ActionAnswer>("done"),
  },
  "applications/own-actions.ts withdrawOwn": {
    sends: ({ link }) => ({ form: { link } }),
    answers: everyone<ActionAnswer>("done"),
  },
  "applications/own-actions.ts takeUpOwn": {
    sends: ({ link }) => ({ form: { link } }),
    answers: everyone<ActionAnswer>("done"),
  },
  // Whoever has the link may; the first to do it leaves nothing for the others.
  "applications/own-actions.ts deleteOwn": {
    sends: ({ link }) => ({ form: { link } }),
    answers: { ...everyone<ActionAnswer>("not-found"), visitor: "/applications/deleted" },
  },
  "applications/word-actions.ts decideOnApplication": {
    sends: ({ callId, applicationId }) => ({ form: { callId, applicationId, word: "yes" } }),
    answers: EDITS,
  },
  "gradings/actions.ts askGrading": {
    sends: ({ patternId }) => ({ values: [patternId, { document: {}, submissionKey: randomUUID() }] }),
    answers: EDITS,
  },
  "gradings/actions.ts readGrading": {
    sends: ({ patternId, gradingId }) => ({ values: [patternId, gradingId] }),
    answers: { ...EDITS, editor: "not-found" },
  },
  "gradings/actions.ts stopGrading": {
    sends: ({ patternId, gradingId }) => ({ values: [patternId, gradingId] }),
    answers: { ...EDITS, editor: "not-found" },
  },
  "openings/actions.ts beginCallOpening": {
    sends: ({ callId }) => ({ form: { callId, timeZone: "" } }),
    answers: EDITS,
  },
  "openings/actions.ts openNewCall": {
    sends: ({ patternId }) => ({ form: { patternId, formKey: randomUUID(), timeZone: "" } }),
    answers: { ...EDITS, editor: "/calls/[id]/opening", owner: "/calls/[id]/opening" },
  },
  "openings/actions.ts saveOpening": {
    sends: ({ draftCallId }) => ({
      form: { callId: draftCallId, version: "1", intent: "keep", title: "Draft" },
    }),
    answers: EDITS,
  },
  "patterns/actions.ts keepDraft": {
    sends: ({ patternId }) => ({ values: [patternId, { content: null, version: 0, baseNumber: 1 }] }),
    answers: EDITS,
  },
  "patterns/actions.ts throwDraftAway": { sends: ({ patternId }) => ({ values: [patternId, 1] }), answers: EDITS },
  "patterns/actions.ts forgetLateSave": { sends: ({ patternId }) => ({ values: [patternId] }), answers: EDITS },
  "patterns/actions.ts saveAsRevision": {
    sends: ({ patternId }) => ({ values: [patternId, { content: null, version: 0, baseNumber: 1, reason: "Why" }] }),
    answers: EDITS,
  },
  "patterns/begin-actions.ts beginPattern": {
    sends: () => ({ form: refusedPattern() }),
    answers: signedIn<ActionAnswer>("signed-out", "done"),
  },
  "patterns/correction-actions.ts saveCorrection": {
    sends: ({ patternId, callId }) => ({
      form: { patternId, callId, size: "small", measurement: "bust", baseNumber: "1", reason: "Why" },
    }),
    answers: EDITS,
  },
  // Good for one person: another designer takes it, and the others have a part already.
  "patterns/invitation-actions.ts accept": {
    sends: ({ token }) => ({ form: { token } }),
    answers: { ...signedIn<ActionAnswer>("signed-out", "done"), "another designer": "/patterns/[id]" },
  },
  "patterns/invitation-actions.ts invite": {
    sends: ({ patternId }) => ({ form: { patternId, role: "viewer", note: "" } }),
    answers: OWNS,
  },
  "patterns/invitation-actions.ts withdraw": {
    sends: ({ patternId, invitationId }) => ({ form: { patternId, invitationId } }),
    answers: OWNS,
  },
  "patterns/people-actions.ts changeHelper": {
    sends: ({ patternId, people }) => ({
      form: { patternId, accountId: people.viewer?.accountId ?? "", role: "viewer" },
    }),
    answers: OWNS,
  },
  // A helper leaves, the owner cannot.
  "patterns/people-actions.ts leave": {
    sends: ({ patternId }) => ({ form: { patternId } }),
    answers: { ...EDITS, viewer: "/patterns", editor: "/patterns" },
  },
  "patterns/people-actions.ts removeHelper": {
    sends: ({ patternId, people }) => ({ form: { patternId, accountId: people.viewer?.accountId ?? "" } }),
    answers: OWNS,
  },
  "patterns/paste-actions.ts makePastedPattern": {
    sends: () => ({ values: [{ text: "", choices: {}, confirmed: false, tableKey: randomUUID() }] }),
    answers: signedIn<ActionAnswer>("signed-out", "done"),
  },
  "places/actions.ts fillPlaceAgain": { sends: (world) => ({ form: freePlace(world) }), answers: EDITS },
  "places/actions.ts sendInvitations": {
    sends: ({ callId }) => ({ form: { callId, saw: "", endsOn: "2090-01-01" } }),
    answers: { ...EDITS, editor: "/calls/[id]/places", owner: "/calls/[id]/places" },
  },
  "places/actions.ts settlePlace": {
    sends: ({ callId, applicationId }) => ({ form: { callId, applicationId, kind: "leave-waiting" } }),
    answers: EDITS,
  },
  "places/actions.ts solvePlaces": { sends: ({ callId }) => ({ form: { callId, with: "yes" } }), answers: EDITS },
  "reports/document-actions.ts bringDocument": {
    sends: () => ({ values: [{ text: "{}", title: "", formKey: randomUUID() }] }),
    answers: signedIn<ActionAnswer>("signed-out", "done"),
  },
  "questions/actions.ts answer": {
    sends: ({ callId }) => ({ form: { callId, "questions[]": randomUUID(), seenAt: "", answer: "Yes." } }),
    answers: EDITS,
  },
  "questions/actions.ts ask": {
    sends: ({ testerId }) => ({ form: { testerId, place: "0-0", formKey: randomUUID(), asks: "Why?" } }),
    answers: everyone<ActionAnswer>("not-found"),
  },
  "questions/actions.ts takeBack": {
    sends: ({ testerId }) => ({ form: { testerId, what: "question", id: randomUUID() } }),
    answers: everyone<ActionAnswer>("not-found"),
  },
  "questions/actions.ts tell": {
    sends: ({ testerId }) => ({ form: { testerId, place: "0-0", formKey: randomUUID(), happened: "It", did: "" } }),
    answers: everyone<ActionAnswer>("not-found"),
  },
  // A tester's own: no part in the pattern lets anybody write in her name.
  "reports/draft-actions.ts keepReportFields": {
    sends: ({ testerId }) => ({ values: [testerId, [{ field: "hours", was: "", becomes: "12" }]] }),
    answers: everyone<ActionAnswer>("not-found"),
  },
  "reports/draft-actions.ts saveReportForm": {
    sends: ({ testerId }) => ({ form: { testerId, was: "{}", hours: "12" } }),
    answers: everyone<ActionAnswer>("not-found"),
  },
  "reports/paste-actions.ts addPastedReports": {
    sends: (world) => ({ values: [pastedReports(world)] }),
    answers: EDITS,
  },
  "testers/forget-actions.ts forget": {
    sends: ({ ownTesterId: testerId }) => ({ form: { testerId } }),
    answers: { ...TESTS, "another designer": "/testing/deleted" },
  },
  // Whoever has the link of somebody without an account answers with it.
  "testers/invited-actions.ts acceptTest": {
    sends: ({ invitedLink: link }) => ({ form: { link, unit: "cm", terms: "us", timeZone: "Europe/Lisbon" } }),
    answers: everyone<ActionAnswer>("/testing/[id]"),
  },
  "testers/invited-actions.ts declineTest": {
    sends: ({ invitedLink: link }) => ({ form: { link } }),
    answers: everyone<ActionAnswer>("done"),
  },
  "testers/invited-actions.ts goOnToPage": {
    sends: ({ invitedLink: link }) => ({ form: { link } }),
    answers: everyone<ActionAnswer>("done"),
  },
  "testers/milestone-actions.ts tapMilestone": {
    sends: ({ ownTesterId: testerId }) => ({ form: { testerId, key: randomUUID(), note: "", word: "behind" } }),
    answers: TESTS,
  },
  "testers/milestone-actions.ts stop": {
    sends: ({ ownTesterId: testerId }) => ({ form: { testerId, key: randomUUID() } }),
    answers: TESTS,
  },
  "testers/milestone-actions.ts goOn": {
    sends: ({ ownTesterId: testerId }) => ({ form: { testerId, key: randomUUID() } }),
    answers: TESTS,
  },
  // She has an account already, so that no other is made for her test.
  "testers/password-actions.ts setPassword": {
    sends: ({ ownTesterId: testerId }) => ({
      form: { testerId, name: "Another Name", email: `${randomUUID()}@example.org`, password: WRONG.password },
    }),
    answers: everyone<ActionAnswer>("not-found"),
  },
  "testers/progress-actions.ts keepNote": {
    sends: ({ callId, testerId }) => ({ form: { callId, testerId, note: "a note" } }),
    answers: EDITS,
  },
  "testers/progress-actions.ts makeNewLink": {
    sends: ({ callId, invitedTesterId: testerId }) => ({ form: { callId, testerId } }),
    answers: EDITS,
  },
  "testers/progress-actions.ts withdrawInvitation": {
    sends: ({ callId, invitedTesterId: testerId }) => ({ form: { callId, testerId } }),
    answers: EDITS,
  },
  "testers/progress-actions.ts extendInvitation": {
    sends: ({ callId, invitedTesterId: testerId }) => ({ form: { callId, testerId, days: "7" } }),
    answers: EDITS,
  },
  "testers/progress-actions.ts close": { sends: ({ callId }) => ({ form: { callId } }), answers: EDITS },
  "testers/progress-actions.ts openAgain": { sends: ({ callId }) => ({ form: { callId } }), answers: EDITS },
  // No such size: refused once it is known who asks.
  "testers/progress-actions.ts addTester": {
    sends: ({ callId }) => ({ form: { callId, name: "Bea", email: "", size: "none", days: "7" } }),
    answers: EDITS,
  },
  "reports/send-actions.ts sendReportForm": {
    sends: ({ testerId }) => ({ form: { testerId, version: "1" } }),
    answers: everyone<ActionAnswer>("not-found"),
  },
};
