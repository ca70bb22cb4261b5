"use server";

import { z } from "zod";
import type { Failure } from "@/server/action";
import { parseForm, textOf } from "@/server/read-form";
import { forTester } from "../home/for-tester";
import { chosenTestersAction } from "../progress/chosen-testers-action";
import { noteRewards, storeCreditName } from "./thanks-mutations";
import { oneLine } from "./thanks-schema";
import { MAX_CREDIT_NAME_LENGTH, MAX_PAYMENT_LENGTH, REWARD_STEPS } from "./reward-steps";

const creditSchema = z.object({
  testerId: z.string(),
  creditName: z.string().transform(oneLine),
  isNamed: z.enum(["yes", "no"]),
});

/** A tester says how they would like to be named among the testers, or that they would not. */
export async function sayCreditName(_last: Failure | undefined, form: FormData): Promise<Failure | undefined> {
  const { testerId, creditName, isNamed } = parseForm(creditSchema, form);
  if (isNamed === "yes" && creditName === "")
    return { status: "failed", says: "Enter the name to use, or choose not to be named." };
  if (isNamed === "yes" && creditName.length > MAX_CREDIT_NAME_LENGTH)
    return { status: "failed", says: `Keep the name under ${MAX_CREDIT_NAME_LENGTH} characters.` };
  return await forTester(testerId, (access) => storeCreditName(access, isNamed === "yes" ? creditName : ""));
}

/** Notes for one or several testers what they got. */
export const noteReward = chosenTestersAction(async (access, testerIds, sent) => {
  const step = z.enum(REWARD_STEPS).parse(textOf(sent, "step"));
  const payment = oneLine(textOf(sent, "payment") ?? "");
  if (payment.length > MAX_PAYMENT_LENGTH)
    return { status: "failed", says: `Keep the note under ${MAX_PAYMENT_LENGTH} characters.` };
  await noteRewards(access, testerIds, { step, payment, now: new Date() });
  return undefined;
});
