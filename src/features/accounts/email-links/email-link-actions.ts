"use server";

import { redirect } from "next/navigation";
import { setTimeout as pause } from "node:timers/promises";
import { isMailOn } from "@/features/mail/mail-status";
import { clientAddress } from "@/server/client-address";
import { AppError } from "@/server/errors";
import { actingViewer, sentenceOf, type Failure } from "@/server/action";
import { formAction, type FormFaults } from "@/server/form-action";
import { consumeAttempt, type Limit } from "@/server/rate-limit";
import { sameOriginPath } from "@/server/same-origin-path";
import { startSession, type SessionOwner } from "@/server/session";
import { optionalViewer } from "@/server/viewer";
import { askLinkSchema, changeAddressSchema, linkPasswordSchema, linkSchema, linkSignUpSchema } from "../schema";
import { proveAccount } from "../prove-account";
import { emailLinkAccess } from "./access";
import { mailAddressLink, mailDeletionLink, mailProofLink, mailSignInLink, mailSignUpLink } from "./ask-mutations";
import { rememberNext, takeNext } from "./remember-next";
import { changeAddressWithLink, signInWithLink, signUpWithLink } from "./use-mutations";

const HOUR = 60 * 60;
const BY_ADDRESS: Limit = { name: "email-link-address", tries: 20, withinSeconds: HOUR };
const BY_EMAIL: Limit = { name: "email-link-email", tries: 5, withinSeconds: HOUR };
/** So long does the answer take, whether or not there is an account. */
const ANSWER_AFTER_MS = 500;

/** Mails a link to sign in; the answer is the same for every address. */
export const askSignInLink = formAction(askLinkSchema, async (asked) => await ask(asked, mailSignInLink));

/** Mails a link to create an account; the answer is the same for every address. */
export const askSignUpLink = formAction(askLinkSchema, async (asked) => await ask(asked, mailSignUpLink));

async function ask(
  { email, next }: { readonly email: string; readonly next?: string },
  mailLink: (address: string) => Promise<void>,
): Promise<undefined> {
  await limited(email);
  await rememberNext(sameOriginPath(next));
  await Promise.all([mailLink(email), pause(ANSWER_AFTER_MS)]);
  return undefined;
}

/** Mails whoever is signed in a link by which they confirm their address. */
export async function askProofLink(): Promise<Failure | undefined> {
  try {
    const viewer = await actingViewer();
    await limited(viewer.email);
    await mailProofLink(viewer);
  } catch (error) {
    return { status: "failed", says: sentenceOf(error) };
  }
  redirect("/account?mailed=proof#address");
}

/** Mails whoever is signed in a link by which they delete their account. */
export async function askDeletionLink(): Promise<Failure | undefined> {
  try {
    const viewer = await actingViewer();
    await limited(viewer.email);
    await mailDeletionLink(viewer);
  } catch (error) {
    return { status: "failed", says: sentenceOf(error) };
  }
  redirect("/account/delete?mailed=link");
}

/** Mails a link to the address that somebody wants for their account; the answer is the same for every address. */
export const askAddressLink = formAction(
  changeAddressSchema,
  async ({ email, password }): Promise<FormFaults | undefined> => {
    const viewer = await actingViewer();
    const account = await proveAccount({ email: viewer.email, password }, await clientAddress());
    if (account?.id !== viewer.accountId) return { password: ["This is not your current password."] };
    if (email === viewer.email) return { email: ["This is your address already. Enter another one."] };
    await limited(email);
    await Promise.all([mailAddressLink(viewer, email), pause(ANSWER_AFTER_MS)]);
    return undefined;
  },
  ["password"],
);

async function limited(email: string): Promise<void> {
  if (!isMailOn()) throw new AppError("not-found");
  await consumeAttempt(BY_ADDRESS, await clientAddress());
  await consumeAttempt(BY_EMAIL, email);
}

const NO_MORE = { "": ["This link cannot be used any more. Reload the page to see why, and to ask for another one."] };

/** Signs in by a mailed link, or confirms the address of the signed-in person’s account. */
export const signInByLink = formAction(linkSchema, async ({ link }) => {
  const viewer = await optionalViewer();
  return await arrive(await signInWithLink(await emailLinkAccess(link), { viewerId: viewer?.accountId ?? null }));
});

/** Sets a new password by a mailed link, and signs in. */
export const setPasswordByLink = formAction(
  linkPasswordSchema,
  async ({ link, newPassword }) =>
    await arrive(await signInWithLink(await emailLinkAccess(link), { viewerId: null, newPassword })),
  ["newPassword"],
);

/** Creates the account for which a link was mailed, and signs in. */
export const signUpByLink = formAction(
  linkSignUpSchema,
  async ({ link, name, password }) =>
    await arrive(await signUpWithLink(await emailLinkAccess(link), { name, password })),
  ["password"],
);

/** Gives an account the address that a link was mailed to. */
export const changeAddressByLink = formAction(linkSchema, async ({ link }) => {
  if ((await changeAddressWithLink(await emailLinkAccess(link))) === null) return NO_MORE;
  redirect("/account#address");
});

async function arrive(owner: SessionOwner | null) {
  if (owner === null) return NO_MORE;
  await startSession(owner);
  redirect(await takeNext());
}
