"use server";

import { revalidatePath } from "next/cache";
import { callAccess } from "@/features/calls/access";
import { viewerAction, type Failure } from "@/server/action";
import { readForm, textOf } from "@/server/read-form";
import { noteTakenIn, takeIn } from "./take-in-mutations";
import { takeInSchema } from "./take-in-schema";

/** Saves a revision with open corrections, or notes that the newest one has them already. */
export const takeInOpen = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const texts = readForm(form);
    const single = ["callId", "baseNumber", "what"].map((name) => [name, textOf(texts, name)]);
    const sent = takeInSchema.parse({ ...Object.fromEntries(single), corrections: texts.get("corrections") ?? [] });
    const { callId, baseNumber, corrections: correctionIds, what } = sent;
    const access = await callAccess(viewer, callId, "editor");
    if (correctionIds.length === 0) return { status: "failed", says: "Tick at least one correction first." };
    if (what === "revise") await takeIn(access, { correctionIds, baseNumber });
    else await noteTakenIn(access, { correctionIds, baseNumber });
    revalidatePath(`/patterns/${access.pattern.patternId}`, "layout");
    revalidatePath(`/calls/${callId}`, "layout");
    return undefined;
  },
);
