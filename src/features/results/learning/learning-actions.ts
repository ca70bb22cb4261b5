"use server";

import { revalidatePath } from "next/cache";
import { callAccess } from "@/features/calls/access";
import { viewerAction, type Failure } from "@/server/action";
import { parseForm } from "@/server/read-form";
import { usePrior } from "./learning-mutations";
import { usePriorSchema } from "./learning-schema";

/** Starts a test's results from what earlier tests showed, or no more. */
export const setUsesPrior = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, uses } = parseForm(usePriorSchema, form);
    await usePrior(await callAccess(viewer, callId, "editor"), uses === "yes");
    revalidatePath(`/calls/${callId}`, "layout");
    return undefined;
  },
);
