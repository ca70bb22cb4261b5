import { randomUUID } from "node:crypto";
import { EDITS, type ActionAnswer, type ActionRow } from "./access-action-row";
import { WRONG } from "./access-forms";
import { everyone, signedIn, type Kind } from "./access-world";

/** For the tester, who is "another designer". */
const TESTS: Readonly<Record<Kind, ActionAnswer>> = {
  ...everyone<ActionAnswer>("not-found"),
  "another designer": "done",
};

/** What testers, and whoever runs their call, do. */
export const TESTER_ACTIONS: Readonly<Record<string, ActionRow>> = {
  "testing/home/forget-actions.ts forget": {
    sends: ({ ownTesterId: testerId }) => ({ form: { testerId } }),
    answers: { ...TESTS, "another designer": "/testing/deleted" },
  },
  // Whoever has the link of somebody without an account answers with it.
  "testing/invited/invited-actions.ts acceptTest": {
    sends: ({ invitedLink: link }) => ({ form: { link, unit: "cm", terms: "us", timeZone: "Europe/Lisbon" } }),
    answers: everyone<ActionAnswer>("/testing/[id]"),
  },
  "testing/invited/invited-actions.ts declineTest": {
    sends: ({ invitedLink: link }) => ({ form: { link } }),
    answers: everyone<ActionAnswer>("done"),
  },
  "testing/invited/invited-actions.ts goOnToPage": {
    sends: ({ invitedLink: link }) => ({ form: { link } }),
    answers: everyone<ActionAnswer>("done"),
  },
  "testing/thanks/thanks-actions.ts sayCreditName": {
    sends: ({ ownTesterId: testerId }) => ({ form: { testerId, creditName: "A. Tester", isNamed: "yes" } }),
    answers: TESTS,
  },
  "testing/photos/photo-actions.ts deletePhoto": {
    sends: ({ ownTesterId: testerId, photoId }) => ({ form: { testerId, photoId } }),
    answers: TESTS,
  },
  "testing/photos/sample-actions.ts chooseMainPhoto": {
    sends: ({ patternId, samplePhotoId: photoId }) => ({ form: { patternId, photoId } }),
    answers: EDITS,
  },
  "testing/photos/sample-actions.ts deleteSamplePhoto": {
    sends: ({ patternId }) => ({ form: { patternId, photoId: randomUUID() } }),
    answers: EDITS,
  },
  "testing/photos/sample-actions.ts describeSamplePhoto": {
    sends: ({ patternId, samplePhotoId: photoId }) => ({ form: { patternId, photoId, note: "A tee" } }),
    answers: EDITS,
  },
  "testing/photos/photo-actions.ts saveConsent": {
    sends: ({ ownTesterId: testerId }) => ({ form: { testerId, pattern_page: "yes" } }),
    answers: TESTS,
  },
  "testing/habits/habit-actions.ts saveHabitConsent": {
    sends: ({ ownTesterId: testerId }) => ({ form: { testerId, allows: "yes" } }),
    answers: TESTS,
  },
  "testing/photos/photo-actions.ts markTakenDown": {
    sends: ({ callId, withdrawalId }) => ({ form: { callId, withdrawalId } }),
    answers: EDITS,
  },
  // No such photo.
  "testing/photos/photo-actions.ts setShown": {
    sends: ({ callId }) => ({ form: { callId, photoId: randomUUID(), isShown: "no" } }),
    answers: { ...EDITS, editor: "not-found", owner: "not-found" },
  },
  "testing/thanks/thanks-actions.ts noteReward": {
    sends: ({ callId, ownTesterId: testerId }) => ({ form: { callId, testerId, step: "named" } }),
    answers: EDITS,
  },
  "testing/writing/writing-actions.ts writeMessage": {
    sends: ({ callId, ownTesterId }) => ({
      form: { callId, testerIds: ownTesterId, formKey: randomUUID(), subject: "Hello", text: "How is it going?" },
    }),
    answers: EDITS,
  },
  "testing/messages/message-change-actions.ts saveWords": {
    sends: ({ callId }) => ({
      form: { callId, kind: "half-way", version: "0", subject: "Half way", text: "How is it going, [name]?", note: "" },
    }),
    answers: EDITS,
  },
  "testing/messages/message-change-actions.ts dropOwnWords": {
    sends: ({ callId }) => ({ form: { callId, kind: "start-today", version: "0" } }),
    answers: EDITS,
  },
  "testing/messages/message-change-actions.ts switchKind": {
    sends: ({ callId }) => ({ form: { callId, kind: "half-way", isOff: "yes" } }),
    answers: EDITS,
  },
  "testing/reminders/choice-actions.ts saveOwnReminders": {
    sends: ({ ownTesterId: testerId }) => ({ form: { testerId, reminders: "weekly", timeZone: "Europe/Lisbon" } }),
    answers: TESTS,
  },
  // Whoever has the link may.
  "testing/reminders/choice-actions.ts saveLinkedReminders": {
    sends: ({ remindersLink: link }) => ({ form: { link, reminders: "none" } }),
    answers: everyone<ActionAnswer>("done"),
  },
  "testing/reminders/choice-actions.ts saveLinkedSummary": {
    sends: ({ summaryLink: link }) => ({ form: { link, dailySummary: "off" } }),
    answers: everyone<ActionAnswer>("done"),
  },
  "testing/reminders/choice-actions.ts saveMailChoices": {
    sends: () => ({ form: { reminders: "none", dailySummary: "off", timeZone: "Europe/Lisbon" } }),
    answers: signedIn<ActionAnswer>("signed-out", "done"),
  },
  "testing/home/milestone-actions.ts tapMilestone": {
    sends: ({ ownTesterId: testerId }) => ({ form: { testerId, key: randomUUID(), note: "", status: "behind" } }),
    answers: TESTS,
  },
  "testing/home/milestone-actions.ts stop": {
    sends: ({ ownTesterId: testerId }) => ({ form: { testerId, key: randomUUID() } }),
    answers: TESTS,
  },
  "testing/home/milestone-actions.ts goOn": {
    sends: ({ ownTesterId: testerId }) => ({ form: { testerId, key: randomUUID() } }),
    answers: TESTS,
  },
  "testing/corrections/answer-actions.ts answer": {
    sends: ({ ownTesterId: testerId, correctionId }) => ({ form: { testerId, correctionId, answer: "kept" } }),
    answers: TESTS,
  },
  // The correction changes no number that could be confirmed.
  "testing/corrections/answer-actions.ts confirm": {
    sends: ({ ownTesterId: testerId, correctionId }) => ({ form: { testerId, correctionId, "worked.width": "98" } }),
    answers: everyone<ActionAnswer>("not-found"),
  },
  "testing/corrections/take-in-actions.ts takeInOpen": {
    sends: ({ callId, correctionId }) => ({
      form: { callId, baseNumber: "1", corrections: correctionId, what: "note" },
    }),
    answers: EDITS,
  },
  "testing/news/news-actions.ts markRead": {
    sends: ({ ownTesterId: testerId }) => ({ form: { testerId, mark: '{"what":"revision","number":1}' } }),
    answers: TESTS,
  },
  // They work from this revision already.
  "testing/news/news-actions.ts move": {
    sends: ({ ownTesterId: testerId, revisionId }) => ({ form: { testerId, from: revisionId, to: revisionId } }),
    answers: TESTS,
  },
  // Without a mail server.
  "testing/lost-links/lost-link-actions.ts askOwnLinks": {
    sends: () => ({ form: { email: WRONG.email } }),
    answers: everyone<ActionAnswer>("not-found"),
  },
  "testing/home/password-actions.ts linkToAccount": {
    sends: ({ ownTesterId: testerId }) => ({ form: { testerId } }),
    answers: { ...TESTS, "another designer": "/testing/[id]" },
  },
  // The tester already has an account, so no other is made for the test.
  "testing/home/password-actions.ts setPassword": {
    sends: ({ ownTesterId: testerId }) => ({
      form: { testerId, name: "Another Name", email: `${randomUUID()}@example.org`, password: WRONG.password },
    }),
    answers: everyone<ActionAnswer>("not-found"),
  },
  // They have sent no report with a number to ask about.
  "testing/asked/asked-actions.ts askAbout": {
    sends: ({ callId, ownTesterId: testerId }) => ({
      form: { callId, testerId, number: '{"count":"width"}', formKey: randomUUID(), asks: "Really?" },
    }),
    answers: { ...EDITS, editor: "not-found", owner: "not-found" },
  },
  "testing/asked/asked-actions.ts askToMeasure": {
    sends: ({ callId, ownTesterId: testerId }) => ({
      form: { callId, testerId, measurement: "bust", what: "measure-again", formKey: randomUUID() },
    }),
    answers: { ...EDITS, editor: "not-found", owner: "not-found" },
  },
  "testing/asked/asked-actions.ts seeAnswer": {
    sends: ({ callId, answeredNumberQuestionId: questionId }) => ({ form: { callId, questionId } }),
    answers: EDITS,
  },
  // It is answered already.
  "testing/asked/asked-actions.ts withdrawAsked": {
    sends: ({ callId, answeredNumberQuestionId: questionId }) => ({ form: { callId, questionId } }),
    answers: EDITS,
  },
  "testing/asked/asked-actions.ts answerAbout": {
    sends: ({ ownTesterId: testerId, numberQuestionId: questionId }) => ({
      form: { testerId, questionId, answer: "Yes" },
    }),
    answers: TESTS,
  },
  "testing/reading/sizes-shown-actions.ts showSizes": {
    sends: ({ ownTesterId: testerId }) => ({ form: { testerId, sizesShown: "own" } }),
    answers: TESTS,
  },
};
