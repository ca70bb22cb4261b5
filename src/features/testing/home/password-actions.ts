"use server";

import { redirect } from "next/navigation";
import { signUpSchema } from "@/features/accounts/schema";
import { clientAddress } from "@/server/client-address";
import { formAction } from "@/server/form-action";
import { consumeAttempt, type Limit } from "@/server/rate-limit";
import { startSession } from "@/server/session";
import { z } from "zod";
import { testerAccess } from "./request-access";
import { setTesterPassword } from "./password-mutations";

const HOUR = 60 * 60;
const BY_ADDRESS: Limit = { name: "sign-up-address", tries: 20, withinSeconds: HOUR };
const BY_ACCOUNT: Limit = { name: "sign-up-account", tries: 5, withinSeconds: HOUR };

/** Creates an account for a tester with link access, and signs them in. */
export const setPassword = formAction(
  signUpSchema.extend({ testerId: z.string() }),
  async ({ testerId, name, email, password }) => {
    const access = await testerAccess(testerId);
    await consumeAttempt(BY_ADDRESS, await clientAddress());
    await consumeAttempt(BY_ACCOUNT, email);
    const account = await setTesterPassword(access, { name, email, password });
    if (account === null)
      return {
        email: [
          "No new account can be created for this address. If the address is yours, sign in, then open your invitation link again and use that account for the test.",
        ],
      };
    await startSession(account);
    redirect(`/testing/${testerId}`);
  },
  ["password"],
);
