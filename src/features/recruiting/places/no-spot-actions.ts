"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { callAccess } from "@/features/calls/access";
import { callPageHref } from "@/features/calls/call-pages";
import { viewerAction, type Failure } from "@/server/action";
import { parseForm } from "@/server/read-form";
import { tellWithoutSpot } from "./no-spot-mutations";

/** Tells applicants without a spot by mail. */
export const tellOthers = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId } = parseForm(z.object({ callId: z.string() }), form);
    await tellWithoutSpot(await callAccess(viewer, callId, "editor"));
    revalidatePath(callPageHref(callId, "sizes"));
    return undefined;
  },
);
