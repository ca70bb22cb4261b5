"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { testerAccess } from "../../home/access";
import { sentenceOf } from "@/server/action";
import { parseForm } from "@/server/read-form";
import type { SendAnswer } from "./send-answer";
import { sendReport } from "./send-mutations";

const formSchema = z.object({ testerId: z.string(), version: z.coerce.number().pipe(z.int()) });

/** Sends a tester's report as it was just reviewed. */
export async function sendReportForm(_last: unknown, form: FormData): Promise<SendAnswer> {
  try {
    const { testerId, version: seen } = parseForm(formSchema, form);
    const { version } = await sendReport(await testerAccess(testerId), seen);
    revalidatePath(`/testing/${testerId}`, "layout");
    return { status: "sent", version };
  } catch (error) {
    return { status: "failed", message: sentenceOf(error) };
  }
}
