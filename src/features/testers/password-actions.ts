"use server";

import { redirect } from "next/navigation";
import { signUpSchema } from "@/features/accounts/schema";
import { clientAddress } from "@/server/client-address";
import { formAction } from "@/server/form-action";
import { countTry, type Limit } from "@/server/rate-limit";
import { startSession } from "@/server/session";
import { z } from "zod";
import { testerAccess } from "./access";
import { setTesterPassword } from "./password-mutations";

const HOUR = 60 * 60;
const BY_ADDRESS: Limit = { name: "sign-up-address", tries: 20, withinSeconds: HOUR };
const BY_ACCOUNT: Limit = { name: "sign-up-account", tries: 5, withinSeconds: HOUR };

/** A tester whom her link let in gets an account, and is signed in to it. */
export const setPassword = formAction(
  signUpSchema.extend({ testerId: z.string() }),
  async ({ testerId, name, email, password }) => {
    const access = await testerAccess(testerId);
    await countTry(BY_ADDRESS, await clientAddress());
    await countTry(BY_ACCOUNT, email);
    const account = await setTesterPassword(access, { name, email, password });
    if (account === null)
      return {
        email: [
          "No new account can be made for this address. If it is yours, sign in; then open your invitation’s link once more and take the test with that account.",
        ],
      };
    await startSession(account);
    redirect(`/testing/${testerId}`);
  },
  ["password"],
);
