import { randomUUID } from "node:crypto";
import type { Kind, World } from "./access-world";

/**
 * What a page or a route answers: "shown" (200), "nothing" (404, the same as for an address that never was), the path
 * that it leads on to, or another status.
 */
export type PageAnswer = "shown" | "nothing" | `/${string}` | number;

/** What an action answers: "done" (whatever its domain says), a known failure's code, or the path that it leads on to. */
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

/** Reports that are understood as far as the question whose they are. */
function pastedReports({ patternId, callId }: World) {
  const choices = { headerRow: 0, columns: [], swatchOver: "10 cm", washed: true };
  return { patternId, callId, text: "", choices, confirmed: false, tableKey: randomUUID() };
}

const WRONG = { email: "nobody@example.org", password: "a wrong password" };

/** Every page and route below src/app, by its folder. */
export const PAGES: Readonly<Record<string, PageRow>> = {
  "/account": { path: () => "/account", answers: signedIn<PageAnswer>("/sign-in", "shown") },
  "/api/auth/[...nextauth]": { path: () => "/api/auth/session", answers: everyone<PageAnswer>("shown") },
  "/live": { path: () => "/live", answers: everyone<PageAnswer>("shown") },
  "/patterns/[patternId]/reports/paste": {
    path: ({ patternId }) => `/patterns/${patternId}/reports/paste`,
    answers: { visitor: "/sign-in", "another designer": "nothing", viewer: 500, editor: "shown", owner: "shown" },
  },
  "/patterns/new/paste": {
    path: () => "/patterns/new/paste",
    answers: signedIn<PageAnswer>("/sign-in", "shown"),
  },
  "/ready": { path: () => "/ready", answers: everyone<PageAnswer>("shown") },
  "/sign-in": { path: () => "/sign-in", answers: signedIn<PageAnswer>("shown", "/") },
  "/sign-up": { path: () => "/sign-up", answers: signedIn<PageAnswer>("shown", "/") },
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
  "patterns/paste-actions.ts makePastedPattern": {
    sends: () => ({ values: [{ text: "", choices: {}, confirmed: false }] }),
    answers: signedIn<ActionAnswer>("signed-out", "done"),
  },
  "reports/paste-actions.ts addPastedReports": {
    sends: (world) => ({ values: [pastedReports(world)] }),
    answers: EDITS,
  },
};
