"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { callAccess } from "@/features/calls/access";
import { sentenceOf, viewerAction, type Failure } from "@/server/action";
import { parseForm, readForm, textOf } from "@/server/read-form";
import { testerAccess } from "../home/access";
import { noteRewards, storeCreditName } from "./thanks-mutations";
import { MAX_CREDIT_NAME_LENGTH, MAX_PAYMENT_LENGTH, oneLine, REWARD_STEPS } from "./thanks-schema";

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
  try {
    await storeCreditName(await testerAccess(testerId), isNamed === "yes" ? creditName : "");
  } catch (error) {
    return { status: "failed", says: sentenceOf(error) };
  }
  revalidatePath(`/testing/${testerId}`, "layout");
  return undefined;
}

/** Notes for one or several testers what they got. */
export const noteReward = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const sent = readForm(form);
    const access = await callAccess(viewer, z.string().parse(textOf(sent, "callId")), "editor");
    const step = z.enum(REWARD_STEPS).parse(textOf(sent, "step"));
    const testerIds = z.array(z.uuid()).parse(sent.get("testerId") ?? []);
    const payment = oneLine(textOf(sent, "payment") ?? "");
    if (testerIds.length === 0)
      return { status: "failed", says: "Choose the testers first, by the box before their name." };
    if (payment.length > MAX_PAYMENT_LENGTH)
      return { status: "failed", says: `Keep the note under ${MAX_PAYMENT_LENGTH} characters.` };
    await noteRewards(access, testerIds, { step, payment, now: new Date() });
    revalidatePath(`/calls/${access.callId}/thanks`);
    return undefined;
  },
);
