"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { idSchema } from "@/engine/pattern";
import { callAccess } from "@/features/calls/access";
import { decide } from "@/features/testing/report/mutations";
import { viewerAction, type Failure } from "@/server/action";
import { parseForm } from "@/server/read-form";

const decisionSchema = z.object({
  callId: z.string(),
  tester: idSchema,
  part: z.enum(["swatches", "readings", "yarn"]),
  position: z.coerce.number().int().min(0),
  decision: z.enum(["keep", "set-aside", "engine"]),
});

/** Includes or excludes one item of a report, or leaves it to the engine again. */
export const decideItem = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, decision, ...at } = parseForm(decisionSchema, form);
    const access = await callAccess(viewer, callId, "editor");
    await decide(access, { ...at, decision: decision === "engine" ? null : decision });
    revalidatePath(`/calls/${callId}`, "layout");
    return undefined;
  },
);
