"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { callAccess } from "@/features/calls/access";
import { callPageHref } from "@/features/calls/call-pages";
import { viewerAction, type Failure } from "@/server/action";
import { parseForm, readForm } from "@/server/read-form";
import { storeDecision, storeDecisions } from "../mutations";
import { sendOwnLink } from "../own/own-link-mutations";
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

const severalSchema = z.object({ callId: z.string(), decision: applicationDecisionSchema });

/** Stores one decision on all applications that were chosen in the list. */
export const decideOnSeveral = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, decision } = parseForm(severalSchema, form);
    const access = await callAccess(viewer, callId, "editor");
    const applicationIds = z.array(z.uuid()).parse(readForm(form).get("applicationId") ?? []);
    if (applicationIds.length === 0)
      return { status: "failed", says: "Choose applications first, by the box before the name." };
    await storeDecisions(access, { applicationIds, decision });
    revalidatePath(callPageHref(callId, "applications"), "layout");
    return undefined;
  },
);

/** Sends an applicant the link to their application again. */
export const sendApplicationLink = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, applicationId } = parseForm(z.object({ callId: z.string(), applicationId: z.uuid() }), form);
    await sendOwnLink(await callAccess(viewer, callId, "editor"), applicationId);
    revalidatePath(callPageHref(callId, "applications"), "layout");
    return undefined;
  },
);
