import { CALL_PAGES } from "./access-call-pages";
import { SEES, TESTS, type PageAnswer, type PageRow } from "./access-page-row";
import { everyone, signedIn } from "./access-world";

/** Every page and route below src/app, by its folder. */
export const PAGES: Readonly<Record<string, PageRow>> = {
  ...CALL_PAGES,
  "/": { path: () => "/", answers: everyone<PageAnswer>("shown") },
  "/account": { path: () => "/account", answers: signedIn<PageAnswer>("/sign-in", "shown") },
  "/account/delete": { path: () => "/account/delete", answers: signedIn<PageAnswer>("/sign-in", "shown") },
  "/account/deleted": { path: () => "/account/deleted", answers: everyone<PageAnswer>("shown") },
  "/account/your-data": { path: () => "/account/your-data", answers: signedIn<PageAnswer>("/sign-in", "shown") },
  "/account/your-data/download": {
    path: () => "/account/your-data/download",
    answers: signedIn<PageAnswer>("/sign-in", "shown"),
  },
  "/api/auth/[...nextauth]": { path: () => "/api/auth/session", answers: everyone<PageAnswer>("shown") },
  "/applications/[link]": { path: ({ link }) => `/applications/${link}`, answers: everyone<PageAnswer>("shown") },
  "/applications/[link]/delete": {
    path: ({ link }) => `/applications/${link}/delete`,
    answers: everyone<PageAnswer>("shown"),
  },
  "/applications/[link]/download": {
    path: ({ link }) => `/applications/${link}/download`,
    answers: everyone<PageAnswer>("shown"),
  },
  "/applications/deleted": { path: () => "/applications/deleted", answers: everyone<PageAnswer>("shown") },
  "/email-links/[link]": {
    path: ({ emailLink }) => `/email-links/${emailLink}`,
    answers: everyone<PageAnswer>("shown"),
  },
  "/invitations/[token]": { path: ({ token }) => `/invitations/${token}`, answers: everyone<PageAnswer>("shown") },
  "/invited/[link]": { path: ({ invitedLink }) => `/invited/${invitedLink}`, answers: everyone<PageAnswer>("shown") },
  "/live": { path: () => "/live", answers: everyone<PageAnswer>("shown") },
  // Without a mail server.
  "/lost-link": { path: () => "/lost-link", answers: everyone<PageAnswer>("nothing") },
  "/open-calls/[callId]": {
    path: ({ draftCallId }) => `/open-calls/${draftCallId}`,
    answers: { ...SEES, visitor: "nothing" },
  },
  "/open-calls/[callId]/apply": {
    path: ({ callId }) => `/open-calls/${callId}/apply`,
    answers: everyone<PageAnswer>("shown"),
  },
  "/open-calls/[callId]/privacy": {
    path: ({ draftCallId }) => `/open-calls/${draftCallId}/privacy`,
    answers: { ...SEES, visitor: "nothing" },
  },
  "/patterns": { path: () => "/patterns", answers: signedIn<PageAnswer>("/sign-in", "shown") },
  "/patterns/archived": { path: () => "/patterns/archived", answers: signedIn<PageAnswer>("/sign-in", "shown") },
  "/patterns/[patternId]": { path: ({ patternId }) => `/patterns/${patternId}`, answers: SEES },
  "/patterns/[patternId]/delete": {
    path: ({ patternId }) => `/patterns/${patternId}/delete`,
    answers: SEES,
  },
  "/patterns/[patternId]/edit": { path: ({ patternId }) => `/patterns/${patternId}/edit`, answers: SEES },
  "/patterns/[patternId]/export": { path: ({ patternId }) => `/patterns/${patternId}/export`, answers: SEES },
  // For whoever asked for it alone.
  "/patterns/[patternId]/gradings/[gradingId]": {
    path: ({ patternId, gradingId }) => `/patterns/${patternId}/gradings/${gradingId}`,
    answers: { ...SEES, viewer: "nothing", editor: "nothing" },
  },
  "/patterns/[patternId]/measurements/[measurementId]": {
    path: ({ patternId }) => `/patterns/${patternId}/measurements/bust`,
    answers: SEES,
  },
  "/patterns/[patternId]/errata": { path: ({ patternId }) => `/patterns/${patternId}/errata`, answers: SEES },
  "/patterns/[patternId]/errata.csv": { path: ({ patternId }) => `/patterns/${patternId}/errata.csv`, answers: SEES },
  "/patterns/[patternId]/people": { path: ({ patternId }) => `/patterns/${patternId}/people`, answers: SEES },
  "/patterns/[patternId]/photos": { path: ({ patternId }) => `/patterns/${patternId}/photos`, answers: SEES },
  "/patterns/[patternId]/photos/state": {
    path: ({ patternId }) => `/patterns/${patternId}/photos/state`,
    answers: SEES,
  },
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
  "/patterns/new/template": {
    path: () => "/patterns/new/template",
    answers: signedIn<PageAnswer>("/sign-in", "shown"),
  },
  "/patterns/new/paste": {
    path: () => "/patterns/new/paste",
    answers: signedIn<PageAnswer>("/sign-in", "shown"),
  },
  // The tester whose photo it is, and those with a part in the pattern.
  "/photos/[photoId]": {
    path: ({ photoId }) => `/photos/${photoId}?size=320`,
    answers: { ...SEES, visitor: "nothing", "another designer": "shown" },
  },
  // Photos are sent to it, and there is nothing to see.
  "/photos/send": { path: () => "/photos/send", answers: everyone<PageAnswer>(405) },
  "/ready": { path: () => "/ready", answers: everyone<PageAnswer>("shown") },
  "/reminders/[link]": {
    path: ({ remindersLink }) => `/reminders/${remindersLink}`,
    answers: everyone<PageAnswer>("shown"),
  },
  // The test has dates by its listing.
  "/reminders/[link]/dates.ics": {
    path: ({ remindersLink }) => `/reminders/${remindersLink}/dates.ics`,
    answers: everyone<PageAnswer>("shown"),
  },
  // Mail readers send to it; whoever opens it is led to the choice.
  "/reminders/[link]/stop": {
    path: () => "/reminders/x/stop",
    answers: everyone<PageAnswer>("/reminders/x"),
  },
  "/schema/[document]": { path: () => "/schema/pattern", answers: everyone<PageAnswer>("shown") },
  "/sign-in": { path: () => "/sign-in", answers: signedIn<PageAnswer>("shown", "/") },
  // Without a mail server.
  "/sign-in/by-mail": { path: () => "/sign-in/by-mail", answers: everyone<PageAnswer>("nothing") },
  "/testing": { path: () => "/testing", answers: signedIn<PageAnswer>("/sign-in", "shown") },
  "/testing/deleted": { path: () => "/testing/deleted", answers: everyone<PageAnswer>("shown") },
  "/testing/[testerId]": { path: ({ ownTesterId }) => `/testing/${ownTesterId}`, answers: TESTS },
  "/testing/[testerId]/your-data": { path: ({ ownTesterId }) => `/testing/${ownTesterId}/your-data`, answers: TESTS },
  "/testing/[testerId]/your-data/download": {
    path: ({ ownTesterId }) => `/testing/${ownTesterId}/your-data/download`,
    answers: TESTS,
  },
  "/testing/[testerId]/privacy": { path: ({ ownTesterId }) => `/testing/${ownTesterId}/privacy`, answers: TESTS },
  "/testing/[testerId]/password": { path: ({ ownTesterId }) => `/testing/${ownTesterId}/password`, answers: TESTS },
  "/testing/[testerId]/dates.ics": {
    path: ({ ownTesterId }) => `/testing/${ownTesterId}/dates.ics`,
    answers: TESTS,
  },
  // Without a mail server.
  "/testing/[testerId]/reminders": {
    path: ({ ownTesterId }) => `/testing/${ownTesterId}/reminders`,
    answers: everyone<PageAnswer>("nothing"),
  },
  "/sign-up": { path: () => "/sign-up", answers: signedIn<PageAnswer>("shown", "/") },
  "/testing/[testerId]/counts": {
    path: ({ ownTesterId }) => `/testing/${ownTesterId}/counts`,
    answers: TESTS,
  },
  "/testing/[testerId]/swatch/send": {
    path: ({ ownTesterId }) => `/testing/${ownTesterId}/swatch/send`,
    answers: TESTS,
  },
  "/testing/[testerId]/fit": {
    path: ({ ownTesterId }) => `/testing/${ownTesterId}/fit`,
    answers: TESTS,
  },
  "/testing/[testerId]/measurements": {
    path: ({ ownTesterId }) => `/testing/${ownTesterId}/measurements?m=bust`,
    answers: TESTS,
  },
  "/testing/[testerId]/photos": {
    path: ({ ownTesterId }) => `/testing/${ownTesterId}/photos`,
    answers: TESTS,
  },
  "/testing/[testerId]/photos/state": {
    path: ({ ownTesterId }) => `/testing/${ownTesterId}/photos/state`,
    answers: TESTS,
  },
  "/testing/[testerId]/pattern": {
    path: ({ ownTesterId }) => `/testing/${ownTesterId}/pattern`,
    answers: TESTS,
  },
  "/testing/[testerId]/report": {
    path: ({ ownTesterId }) => `/testing/${ownTesterId}/report`,
    answers: TESTS,
  },
  "/testing/[testerId]/swatch": {
    path: ({ ownTesterId }) => `/testing/${ownTesterId}/swatch`,
    answers: TESTS,
  },
  "/testing/[testerId]/yarn": {
    path: ({ ownTesterId }) => `/testing/${ownTesterId}/yarn`,
    answers: TESTS,
  },
};
