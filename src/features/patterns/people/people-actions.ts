"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { viewerAction, type Failure } from "@/server/action";
import { parseForm } from "@/server/read-form";
import { patternAccess } from "../access";
import { helperRoleSchema } from "./invitation-schema";
import { changeRole, leavePattern, removePerson } from "./people-mutations";

const helperSchema = z.object({ patternId: z.string(), accountId: z.uuid() });

/** The owner changes a helper's role. */
export const changeHelper = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const asked = parseForm(helperSchema.extend({ role: helperRoleSchema }), form);
    const access = await patternAccess(viewer, asked.patternId, "owner");
    await changeRole(access, asked.accountId, asked.role);
    revalidatePath(`/patterns/${asked.patternId}`, "layout");
    return undefined;
  },
);

/** The owner removes a helper. */
export const removeHelper = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const asked = parseForm(helperSchema, form);
    await removePerson(await patternAccess(viewer, asked.patternId, "owner"), asked.accountId);
    revalidatePath(`/patterns/${asked.patternId}`, "layout");
    return undefined;
  },
);

/** A helper leaves. */
export const leave = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { patternId } = parseForm(z.object({ patternId: z.string() }), form);
    await leavePattern(await patternAccess(viewer, patternId, "viewer"));
    revalidatePath("/patterns", "layout");
    redirect("/patterns");
  },
);
