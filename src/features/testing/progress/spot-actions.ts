"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { viewerAction, type Failure } from "@/server/action";
import { readForm, textOf } from "@/server/read-form";
import { freeSpots, returnSpot } from "./spot-mutations";

function spotAction(run: (access: CallAccess, testerIds: readonly string[]) => Promise<unknown>) {
  return viewerAction(async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const sent = readForm(form);
    const access = await callAccess(viewer, z.string().parse(textOf(sent, "callId")), "editor");
    const testerIds = z.array(z.uuid()).parse(sent.get("testerId") ?? []);
    if (testerIds.length === 0)
      return { status: "failed", says: "Choose the testers first, by the box before their name." };
    await run(access, testerIds);
    revalidatePath(`/calls/${access.callId}`, "layout");
    return undefined;
  });
}

/** Opens the spots of one or several testers who gave no sign. */
export const openSpots = spotAction(freeSpots);

/** Gives such a spot back as long as it is open. */
export const giveSpotBack = spotAction(async (access, [testerId = ""]) => {
  await returnSpot(access, testerId);
});
