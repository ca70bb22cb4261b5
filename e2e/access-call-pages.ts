import { SEES, type PageAnswer, type PageRow } from "./access-page-row";
import { signedIn } from "./access-world";

/** The pages and routes of a call, for the designer and their helpers. */
export const CALL_PAGES: Readonly<Record<string, PageRow>> = {
  "/calls/archived": { path: () => "/calls/archived", answers: signedIn<PageAnswer>("/sign-in", "shown") },
  "/calls/[callId]": { path: ({ callId }) => `/calls/${callId}`, answers: SEES },
  "/calls/[callId]/analysis": { path: ({ callId }) => `/calls/${callId}/analysis`, answers: SEES },
  "/calls/[callId]/applications": { path: ({ callId }) => `/calls/${callId}/applications`, answers: SEES },
  "/calls/[callId]/applications/[applicationId]": {
    path: ({ callId, applicationId }) => `/calls/${callId}/applications/${applicationId}`,
    answers: SEES,
  },
  "/calls/[callId]/changes": { path: ({ callId }) => `/calls/${callId}/changes`, answers: SEES },
  "/calls/[callId]/changes/[planId]": {
    path: ({ callId, planId }) => `/calls/${callId}/changes/${planId}`,
    answers: SEES,
  },
  "/calls/[callId]/changes/[planId]/status": {
    path: ({ callId, planId }) => `/calls/${callId}/changes/${planId}/status`,
    answers: SEES,
  },
  "/calls/[callId]/correct": { path: ({ callId }) => `/calls/${callId}/correct`, answers: SEES },
  "/calls/[callId]/mistakes": { path: ({ callId }) => `/calls/${callId}/mistakes`, answers: SEES },
  "/calls/[callId]/mistakes.csv": { path: ({ callId }) => `/calls/${callId}/mistakes.csv`, answers: SEES },
  "/calls/[callId]/export": { path: ({ callId }) => `/calls/${callId}/export`, answers: SEES },
  "/calls/[callId]/fit": { path: ({ callId }) => `/calls/${callId}/fit`, answers: SEES },
  "/calls/[callId]/fit.csv": { path: ({ callId }) => `/calls/${callId}/fit.csv`, answers: SEES },
  "/calls/[callId]/differences": { path: ({ callId }) => `/calls/${callId}/differences`, answers: SEES },
  "/calls/[callId]/differences.csv": { path: ({ callId }) => `/calls/${callId}/differences.csv`, answers: SEES },
  "/calls/[callId]/method": { path: ({ callId }) => `/calls/${callId}/method`, answers: SEES },
  // Without a mail server.
  "/calls/[callId]/messages": {
    path: ({ callId }) => `/calls/${callId}/messages`,
    answers: signedIn<PageAnswer>("/sign-in", "nothing"),
  },
  "/calls/[callId]/messages/[kind]": {
    path: ({ callId }) => `/calls/${callId}/messages/half-way`,
    answers: signedIn<PageAnswer>("/sign-in", "nothing"),
  },
  "/calls/[callId]/photos": { path: ({ callId }) => `/calls/${callId}/photos`, answers: SEES },
  "/calls/[callId]/pattern": { path: ({ callId }) => `/calls/${callId}/pattern`, answers: SEES },
  "/calls/[callId]/thanks": { path: ({ callId }) => `/calls/${callId}/thanks`, answers: SEES },
  "/calls/[callId]/questions": { path: ({ callId }) => `/calls/${callId}/questions`, answers: SEES },
  "/calls/[callId]/sizes": { path: ({ callId }) => `/calls/${callId}/sizes`, answers: SEES },
  "/calls/[callId]/sizes/state": { path: ({ callId }) => `/calls/${callId}/sizes/state`, answers: SEES },
  "/calls/[callId]/sizes/export": { path: ({ callId }) => `/calls/${callId}/sizes/export`, answers: SEES },
  "/calls/[callId]/progress": { path: ({ callId }) => `/calls/${callId}/progress`, answers: SEES },
  "/calls/[callId]/progress/[testerId]": {
    path: ({ callId, testerId }) => `/calls/${callId}/progress/${testerId}`,
    answers: SEES,
  },
  // A test that follows another.
  "/calls/[callId]/progress/again": {
    path: ({ draftCallId }) => `/calls/${draftCallId}/progress/again`,
    answers: { ...SEES, viewer: "nothing" },
  },
  "/calls/[callId]/progress/add": {
    path: ({ callId }) => `/calls/${callId}/progress/add`,
    answers: { ...SEES, viewer: "nothing" },
  },
  "/calls/[callId]/progress/message": {
    path: ({ callId, testerId }) => `/calls/${callId}/progress/message?testerId=${testerId}`,
    answers: { ...SEES, viewer: "nothing" },
  },
  "/calls/[callId]/steps.csv": { path: ({ callId }) => `/calls/${callId}/steps.csv`, answers: SEES },
  "/calls/[callId]/set-up": { path: ({ callId }) => `/calls/${callId}/set-up`, answers: SEES },
  "/calls/[callId]/swatches": { path: ({ callId }) => `/calls/${callId}/swatches`, answers: SEES },
  "/calls/[callId]/swatches.csv": { path: ({ callId }) => `/calls/${callId}/swatches.csv`, answers: SEES },
  "/calls/[callId]/habits": { path: ({ callId }) => `/calls/${callId}/habits`, answers: SEES },
  "/calls/[callId]/habits.csv": { path: ({ callId }) => `/calls/${callId}/habits.csv`, answers: SEES },
  "/calls/[callId]/yarn": { path: ({ callId }) => `/calls/${callId}/yarn`, answers: SEES },
  "/calls/[callId]/yarn.csv": { path: ({ callId }) => `/calls/${callId}/yarn.csv`, answers: SEES },
};
