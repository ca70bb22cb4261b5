"use server";

import { redirect } from "next/navigation";
import { isMailOn } from "@/features/mail/mail-status";
import { actingViewer } from "@/server/action";
import { clientAddress } from "@/server/client-address";
import { formAction } from "@/server/form-action";
import { sameOriginPath } from "@/server/same-origin-path";
import { consumeAttempt, type Limit } from "@/server/rate-limit";
import { endSession, startSession } from "@/server/session";
import { optionalViewer } from "@/server/viewer";
import { changeAbout, changePassword, createAccount, endAllSessions } from "./mutations";
import { proveAccount, type Credentials } from "./prove-account";
import { aboutSchema, passwordSchema, signInSchema, signUpSchema } from "./schema";

const HOUR = 60 * 60;
const SIGN_UPS_BY_ADDRESS: Limit = { name: "sign-up-address", tries: 20, withinSeconds: HOUR };
const SIGN_UPS_BY_ACCOUNT: Limit = { name: "sign-up-account", tries: 5, withinSeconds: HOUR };

export const signIn = formAction(
  signInSchema,
  async ({ email, password, next }) => {
    if (!(await startProvenSession({ email, password })))
      return { "": ["This e-mail address and password don’t match. Check both and try again."] };
    redirect(sameOriginPath(next));
  },
  ["password"],
);

/** Creates an account and signs in; an e-mail with an existing account is sent to the sign-in page. */
export const signUp = formAction(
  signUpSchema,
  async ({ name, email, password, next }) => {
    if (isMailOn()) return { "": ["Reload this page: an account is now created by a link that is mailed to you."] };
    await consumeAttempt(SIGN_UPS_BY_ADDRESS, await clientAddress());
    await consumeAttempt(SIGN_UPS_BY_ACCOUNT, email);
    await createAccount({ name, email, password });
    if (await startProvenSession({ email, password })) redirect(sameOriginPath(next));
    redirect(`/sign-in?${new URLSearchParams({ new: email, next: sameOriginPath(next) })}`);
  },
  ["password"],
);

/** Signs in with e-mail and password. @returns whether they matched. */
async function startProvenSession(credentials: Credentials): Promise<boolean> {
  const account = await proveAccount(credentials, await clientAddress());
  if (account === null) return false;
  await startSession({ accountId: account.id, name: account.name, sessionVersion: account.sessionVersion });
  return true;
}

export const saveAbout = formAction(aboutSchema, async (about) => {
  const { accountId } = await actingViewer();
  await changeAbout(accountId, about);
  return undefined;
});

export const savePassword = formAction(
  passwordSchema,
  async ({ password, newPassword }) => {
    const viewer = await actingViewer();
    const account = await proveAccount({ email: viewer.email, password }, await clientAddress());
    if (account === null || account.id !== viewer.accountId)
      return { password: ["This is not your current password."] };
    const { id: accountId, name, sessionVersion } = account;
    const raised = await changePassword({ accountId, sessionVersion, password: newPassword });
    await startSession({ accountId, name, sessionVersion: raised });
    return undefined;
  },
  ["password", "newPassword"],
);

export async function signOut(): Promise<never> {
  await endSession();
  redirect("/sign-in");
}

export async function signOutEverywhere(): Promise<never> {
  const viewer = await optionalViewer();
  if (viewer !== null) await endAllSessions(viewer.accountId);
  await endSession();
  redirect("/sign-in");
}
