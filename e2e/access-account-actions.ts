import { EDITS, type ActionAnswer, type ActionRow } from "./access-action-row";
import { WRONG } from "./access-forms";
import { everyone, signedIn } from "./access-world";

/** What people do about their own account. */
export const ACCOUNT_ACTIONS: Readonly<Record<string, ActionRow>> = {
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
  // None of them created the first account.
  "accounts/operator/operator-actions.ts checkMail": {
    sends: () => ({ form: {} }),
    answers: signedIn<ActionAnswer>("signed-out", "not-found"),
  },
  // Without a mail server.
  "accounts/email-links/email-link-actions.ts askSignInLink": {
    sends: () => ({ form: { email: WRONG.email, next: "/" } }),
    answers: everyone<ActionAnswer>("not-found"),
  },
  "accounts/email-links/email-link-actions.ts askSignUpLink": {
    sends: () => ({ form: { email: WRONG.email, next: "/" } }),
    answers: everyone<ActionAnswer>("not-found"),
  },
  // Whoever has the link may, and the first leaves nothing for the others; here it needs a new password, but for its account.
  "accounts/email-links/email-link-actions.ts signInByLink": {
    sends: ({ emailLink }) => ({ form: { link: emailLink } }),
    answers: { ...everyone<ActionAnswer>("done"), owner: "/" },
  },
  "accounts/email-links/email-link-actions.ts setPasswordByLink": {
    sends: ({ emailLink }) => ({ form: { link: emailLink, newPassword: "another long password" } }),
    answers: { ...everyone<ActionAnswer>("done"), visitor: "/" },
  },
  "accounts/email-links/email-link-actions.ts signUpByLink": {
    sends: ({ emailLink }) => ({ form: { link: emailLink, name: "Else", password: "another long password" } }),
    answers: everyone<ActionAnswer>("done"),
  },
  // Without a mail server.
  "accounts/email-links/email-link-actions.ts askProofLink": {
    sends: () => ({ form: {} }),
    answers: signedIn<ActionAnswer>("signed-out", "not-found"),
  },
  "accounts/email-links/email-link-actions.ts askDeletionLink": {
    sends: () => ({ form: {} }),
    answers: signedIn<ActionAnswer>("signed-out", "not-found"),
  },
  // The password is wrong.
  "accounts/email-links/email-link-actions.ts askAddressLink": {
    sends: () => ({ form: WRONG }),
    answers: signedIn<ActionAnswer>("signed-out", "done"),
  },
  // This link is for something else.
  "accounts/email-links/email-link-actions.ts changeAddressByLink": {
    sends: ({ emailLink }) => ({ form: { link: emailLink } }),
    answers: everyone<ActionAnswer>("done"),
  },
  // This is not its name.
  "testing/pattern-deletion/pattern-deletion-actions.ts deleteForGood": {
    sends: ({ patternId }) => ({ form: { patternId, name: "another" } }),
    answers: { ...EDITS, editor: "not-allowed" },
  },
  "testing/account-data/deletion-actions.ts deleteByLink": {
    sends: ({ emailLink }) => ({ form: { link: emailLink } }),
    answers: everyone<ActionAnswer>("done"),
  },
  "testing/account-data/deletion-actions.ts deleteByPassword": {
    sends: () => ({ form: { password: WRONG.password } }),
    answers: signedIn<ActionAnswer>("signed-out", "done"),
  },
};
