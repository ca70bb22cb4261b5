"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import type { TesterAccess } from "../../home/access";
import { testerAccess } from "../../home/request-access";
import { storeMilestone } from "../../home/milestone-mutations";
import { sentenceOf } from "@/server/action";
import { parseForm } from "@/server/read-form";
import type { SendAnswer } from "./send-answer";
import { sendReport } from "./send-mutations";
import { SWATCH_PLANS, type SwatchPlan } from "./swatch-plan";

const formSchema = z.object({ testerId: z.string(), version: z.coerce.number().pipe(z.int()) });
const PLANS = ["start", "again", "wait"] as const satisfies readonly SwatchPlan[];
const swatchSchema = formSchema.extend({
  plan: z.enum(PLANS, { error: "Choose what you will do now." }),
  key: z.uuid(),
});

/** Sends a tester's swatch, with whatever else they have entered, and tells the designer what they do next. */
export async function sendSwatchForm(_last: unknown, form: FormData): Promise<SendAnswer> {
  return await sending(async () => {
    const { plan, key, ...reviewed } = parseForm(swatchSchema, form);
    const { access, version } = await sendReviewed(reviewed);
    const { status, note } = SWATCH_PLANS[plan];
    await storeMilestone(access, { status, note, idempotencyKey: key });
    return { access, version };
  });
}

/** Sends a tester's report as it was just reviewed. */
export async function sendReportForm(_last: unknown, form: FormData): Promise<SendAnswer> {
  return await sending(() => sendReviewed(parseForm(formSchema, form)));
}

interface Sent {
  readonly access: TesterAccess;
  readonly version: number;
}

async function sendReviewed({ testerId, version: seen }: z.infer<typeof formSchema>): Promise<Sent> {
  const access = await testerAccess(testerId);
  return { access, ...(await sendReport(access, seen)) };
}

async function sending(send: () => Promise<Sent>): Promise<SendAnswer> {
  try {
    const { access, version } = await send();
    revalidatePath(`/testing/${access.testerId}`, "layout");
    return { status: "sent", version };
  } catch (error) {
    return { status: "failed", message: sentenceOf(error) };
  }
}
