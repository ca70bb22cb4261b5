"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import { createAccount } from "@/features/accounts/mutations";
import { signUpSchema } from "@/features/accounts/schema";
import { isMailOn } from "@/features/mail/mail-status";
import { actingViewer, sentenceOf, type Failure } from "@/server/action";
import { clientAddress } from "@/server/client-address";
import { AppError } from "@/server/errors";
import { formAction } from "@/server/form-action";
import { consumeAttempt, type Limit } from "@/server/rate-limit";
import { parseForm } from "@/server/read-form";
import { bindOwnTest } from "../invited/invited-mutations";
import { testerAccess } from "./request-access";

const HOUR = 60 * 60;
const BY_ADDRESS: Limit = { name: "sign-up-address", tries: 20, withinSeconds: HOUR };
const BY_ACCOUNT: Limit = { name: "sign-up-account", tries: 5, withinSeconds: HOUR };

/**
 * Creates an account for a tester with link access, where no mail is sent. The answer is the same for an address that has
 * one: they sign in, and then use that account for the test.
 */
export const setPassword = formAction(
  signUpSchema.extend({ testerId: z.string() }),
  async ({ testerId, name, email, password }) => {
    if ((await testerAccess(testerId)).accountId !== null) throw new AppError("not-found");
    if (isMailOn()) return { "": ["Reload this page: an account is now created by a link that is mailed to you."] };
    await consumeAttempt(BY_ADDRESS, await clientAddress());
    await consumeAttempt(BY_ACCOUNT, email);
    await createAccount({ name, email, password });
    redirect(`/sign-in?${new URLSearchParams({ new: email, next: `/testing/${testerId}/password` })}`);
  },
  ["password"],
);

/** Links a test that was opened by its link to the account of whoever is signed in. */
export async function linkToAccount(_last: Failure | undefined, form: FormData): Promise<Failure | undefined> {
  const { testerId } = parseForm(z.object({ testerId: z.string() }), form);
  try {
    await bindOwnTest(await testerAccess(testerId), await actingViewer());
  } catch (error) {
    return { status: "failed", says: sentenceOf(error) };
  }
  redirect(`/testing/${testerId}`);
}
