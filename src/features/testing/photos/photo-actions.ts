"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { callAccess } from "@/features/calls/access";
import { viewerAction, type Failure } from "@/server/action";
import { parseForm, readForm, textOf } from "@/server/read-form";
import { forTester } from "../home/for-tester";
import { deleteOwnPhoto, noteTakenDown, storeConsent } from "./photo-mutations";
import { PHOTO_USES } from "./photo-views";
import { showPhoto } from "./show-mutations";

/** A tester deletes one of their photos. */
export async function deletePhoto(_last: Failure | undefined, form: FormData): Promise<Failure | undefined> {
  const { testerId, photoId } = parseForm(z.object({ testerId: z.string(), photoId: z.uuid() }), form);
  return await forTester(testerId, (access) => deleteOwnPhoto(access, photoId));
}

/** A tester says for what their photos may be used; a box that is not ticked is a no. */
export async function saveConsent(_last: Failure | undefined, form: FormData): Promise<Failure | undefined> {
  const sent = readForm(form);
  const testerId = z.string().parse(textOf(sent, "testerId"));
  const allowed = PHOTO_USES.filter((use) => textOf(sent, use) === "yes");
  const guardianAgrees = textOf(sent, "guardianAgrees") === "yes";
  return await forTester(testerId, (access) => storeConsent(access, allowed, { guardianAgrees }));
}

/** A designer has taken down what a tester no longer allows. */
export const markTakenDown = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, withdrawalId } = parseForm(z.object({ callId: z.string(), withdrawalId: z.uuid() }), form);
    await noteTakenDown(await callAccess(viewer, callId, "editor"), withdrawalId);
    revalidatePath(`/calls/${callId}`, "layout");
    return undefined;
  },
);

const shownSchema = z.object({ callId: z.string(), photoId: z.uuid(), isShown: z.enum(["yes", "no"]) });

/** A designer shows a tester's photo on the pattern's page, or no more. */
export const setShown = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, photoId, isShown } = parseForm(shownSchema, form);
    await showPhoto(await callAccess(viewer, callId, "editor"), { photoId, isShown: isShown === "yes" });
    revalidatePath(`/calls/${callId}`, "layout");
    return undefined;
  },
);
