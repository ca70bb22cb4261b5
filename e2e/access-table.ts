import { randomUUID } from "node:crypto";
import { pastedReports, refusedPattern, WRONG } from "./access-forms";
import type { Kind, World } from "./access-world";

/**
 * What a page or a route answers: "shown" (200), "nothing" (404, the same as for an address that never was), the path
 * that it leads on to, or another status.
 */
export type PageAnswer = "shown" | "nothing" | `/${string}` | number;

/**
 * What an action answers: "done" (whatever its domain says), a known failure's code, or the path that it leads on to, with
 * [id] for an id in it.
 */
export type ActionAnswer = "done" | "signed-out" | "not-found" | "not-allowed" | `/${string}`;

interface PageRow {
  readonly path: (world: World) => string;
  readonly answers: Readonly<Record<Kind, PageAnswer>>;
}

interface ActionRow {
  /** What it is handed: values, or the fields of a form. */
  readonly sends: (world: World) => { values: unknown[] } | { form: Readonly<Record<string, string>> };
  readonly answers: Readonly<Record<Kind, ActionAnswer>>;
}

function everyone<Answer>(answer: Answer): Record<Kind, Answer> {
  return { visitor: answer, "another designer": answer, viewer: answer, editor: answer, owner: answer };
}

/** For the signed-in, whoever they are. */
function signedIn<Answer>(visitor: Answer, others: Answer): Record<Kind, Answer> {
  return { ...everyone(others), visitor };
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

/** For those with any part in the pattern. */
const SEES: Readonly<Record<Kind, PageAnswer>> = {
  visitor: "/sign-in",
  "another designer": "nothing",
  viewer: "shown",
  editor: "shown",
  owner: "shown",
};

/** Every page and route below src/app, by its folder. */
export const PAGES: Readonly<Record<string, PageRow>> = {
  "/": { path: () => "/", answers: signedIn<PageAnswer>("shown", "/patterns") },
  "/account": { path: () => "/account", answers: signedIn<PageAnswer>("/sign-in", "shown") },
  "/api/auth/[...nextauth]": { path: () => "/api/auth/session", answers: everyone<PageAnswer>("shown") },
  "/calls/[callId]": { path: ({ callId }) => `/calls/${callId}`, answers: SEES },
  "/calls/[callId]/changes": { path: ({ callId }) => `/calls/${callId}/changes`, answers: SEES },
  "/calls/[callId]/changes/[planId]": {
    path: ({ callId, planId }) => `/calls/${callId}/changes/${planId}`,
    answers: SEES,
  },
  "/calls/[callId]/correct": { path: ({ callId }) => `/calls/${callId}/correct`, answers: SEES },
  "/calls/[callId]/doubtful": { path: ({ callId }) => `/calls/${callId}/doubtful`, answers: SEES },
  "/calls/[callId]/doubtful.csv": { path: ({ callId }) => `/calls/${callId}/doubtful.csv`, answers: SEES },
  "/calls/[callId]/export": { path: ({ callId }) => `/calls/${callId}/export`, answers: SEES },
  "/calls/[callId]/fit": { path: ({ callId }) => `/calls/${callId}/fit`, answers: SEES },
  "/calls/[callId]/fit.csv": { path: ({ callId }) => `/calls/${callId}/fit.csv`, answers: SEES },
  "/calls/[callId]/gaps": { path: ({ callId }) => `/calls/${callId}/gaps`, answers: SEES },
  "/calls/[callId]/gaps.csv": { path: ({ callId }) => `/calls/${callId}/gaps.csv`, answers: SEES },
  "/calls/[callId]/method": { path: ({ callId }) => `/calls/${callId}/method`, answers: SEES },
  "/calls/[callId]/steps.csv": { path: ({ callId }) => `/calls/${callId}/steps.csv`, answers: SEES },
  "/calls/[callId]/swatches": { path: ({ callId }) => `/calls/${callId}/swatches`, answers: SEES },
  "/calls/[callId]/swatches.csv": { path: ({ callId }) => `/calls/${callId}/swatches.csv`, answers: SEES },
  "/calls/[callId]/testers": { path: ({ callId }) => `/calls/${callId}/testers`, answers: SEES },
  "/calls/[callId]/testers.csv": { path: ({ callId }) => `/calls/${callId}/testers.csv`, answers: SEES },
  "/calls/[callId]/yarn": { path: ({ callId }) => `/calls/${callId}/yarn`, answers: SEES },
  "/calls/[callId]/yarn.csv": { path: ({ callId }) => `/calls/${callId}/yarn.csv`, answers: SEES },
  "/invitations/[token]": { path: ({ token }) => `/invitations/${token}`, answers: everyone<PageAnswer>("shown") },
  "/live": { path: () => "/live", answers: everyone<PageAnswer>("shown") },
  "/patterns": { path: () => "/patterns", answers: signedIn<PageAnswer>("/sign-in", "shown") },
  "/patterns/[patternId]": { path: ({ patternId }) => `/patterns/${patternId}`, answers: SEES },
  "/patterns/[patternId]/edit": { path: ({ patternId }) => `/patterns/${patternId}/edit`, answers: SEES },
  "/patterns/[patternId]/export": { path: ({ patternId }) => `/patterns/${patternId}/export`, answers: SEES },
  "/patterns/[patternId]/measurements/[measurementId]": {
    path: ({ patternId }) => `/patterns/${patternId}/measurements/bust`,
    answers: SEES,
  },
  "/patterns/[patternId]/people": { path: ({ patternId }) => `/patterns/${patternId}/people`, answers: SEES },
  "/patterns/[patternId]/drawing.svg": {
    path: ({ patternId }) => `/patterns/${patternId}/drawing.svg`,
    answers: SEES,
  },
  "/patterns/[patternId]/pieces": { path: ({ patternId }) => `/patterns/${patternId}/pieces`, answers: SEES },
  "/patterns/[patternId]/revisions": { path: ({ patternId }) => `/patterns/${patternId}/revisions`, answers: SEES },
  "/patterns/[patternId]/revisions/[number]": {
    path: ({ patternId }) => `/patterns/${patternId}/revisions/1`,
    answers: SEES,
  },
  "/patterns/new/blank": {
    path: () => "/patterns/new/blank",
    answers: signedIn<PageAnswer>("/sign-in", "shown"),
  },
  "/patterns/[patternId]/revisions/compare": {
    path: ({ patternId }) => `/patterns/${patternId}/revisions/compare?from=1&to=2`,
    answers: SEES,
  },
  "/patterns/new/document": {
    path: () => "/patterns/new/document",
    answers: signedIn<PageAnswer>("/sign-in", "shown"),
  },
  "/patterns/[patternId]/reports/paste": {
    path: ({ patternId }) => `/patterns/${patternId}/reports/paste`,
    answers: { visitor: "/sign-in", "another designer": "nothing", viewer: "nothing", editor: "shown", owner: "shown" },
  },
  "/patterns/new/paste": {
    path: () => "/patterns/new/paste",
    answers: signedIn<PageAnswer>("/sign-in", "shown"),
  },
  "/ready": { path: () => "/ready", answers: everyone<PageAnswer>("shown") },
  "/schema/[document]": { path: () => "/schema/pattern", answers: everyone<PageAnswer>("shown") },
  "/sign-in": { path: () => "/sign-in", answers: signedIn<PageAnswer>("shown", "/patterns") },
  "/sign-up": { path: () => "/sign-up", answers: signedIn<PageAnswer>("shown", "/patterns") },
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
  "reports/document-actions.ts bringDocument": {
    sends: () => ({ values: [{ text: "{}", title: "", formKey: randomUUID() }] }),
    answers: signedIn<ActionAnswer>("signed-out", "done"),
  },
  "reports/paste-actions.ts addPastedReports": {
    sends: (world) => ({ values: [pastedReports(world)] }),
    answers: EDITS,
  },
};
