"use server";

import { revalidatePath } from "next/cache";
import { callAccess } from "@/features/calls/access";
import { actingViewer, viewerAction, type Failure } from "@/server/action";
import { parseForm } from "@/server/read-form";
import { sayAction } from "../questions/say-action";
import { originalOfCall } from "./message-change-loaders";
import { dropWords, storeWords, switchMail } from "./message-change-mutations";
import { changedWordsSchema, switchSchema, versionedSchema } from "./message-change-schema";

/** A designer writes a kind of mail in their own words, or adds a note to it. */
export const saveWords = sayAction(
  { schema: changedWordsSchema, fields: ["subject", "text", "note"] },
  async ({ callId, ...changed }) => {
    const access = await callAccess(await actingViewer(), callId, "editor");
    // Where somebody else was first, too: what was typed is then saved over theirs by sending again.
    revalidatePath(`/calls/${callId}/messages`, "layout");
    const faults = await storeWords(access, { ...changed, original: await originalOfCall(access, changed.kind) });
    return Object.keys(faults).length === 0 ? undefined : faults;
  },
);

/** A kind of mail goes out in Sizewright's words again. */
export const dropOwnWords = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, ...changed } = parseForm(versionedSchema, form);
    await dropWords(await callAccess(viewer, callId, "editor"), changed);
    revalidatePath(`/calls/${callId}/messages`, "layout");
    return undefined;
  },
);

/** A kind of mail is switched off or on. */
export const switchKind = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, kind, isOff } = parseForm(switchSchema, form);
    await switchMail(await callAccess(viewer, callId, "editor"), { kind, isOff: isOff === "yes" });
    revalidatePath(`/calls/${callId}/messages`, "layout");
    return undefined;
  },
);
