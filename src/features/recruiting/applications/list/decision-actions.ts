"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { callAccess } from "@/features/calls/access";
import { callPageHref } from "@/features/calls/call-pages";
import { viewerAction, type Failure } from "@/server/action";
import { parseForm } from "@/server/read-form";
import { storeDecision } from "../mutations";
import { applicationDecisionSchema } from "../schema";

const formSchema = z.object({
  callId: z.string(),
  applicationId: z.uuid(),
  decision: z.union([applicationDecisionSchema, z.literal("").transform(() => null)]),
});

/** Stores the designer's yes, maybe or no to an application. */
export const decideOnApplication = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, ...given } = parseForm(formSchema, form);
    await storeDecision(await callAccess(viewer, callId, "editor"), given);
    revalidatePath(callPageHref(callId, "applications"), "layout");
    return undefined;
  },
);
