"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { viewerAction, type Failure } from "@/server/action";
import { idempotencyKey } from "@/server/idempotency-key";
import { parseForm } from "@/server/read-form";
import { patternAccess } from "../access";
import { archivePattern, bringBackPattern, duplicatePattern } from "./owner-mutations";

const patternSchema = z.object({ patternId: z.string() });
const copySchema = patternSchema.extend({ formKey: z.uuid() });

/** The owner copies a pattern, and is led to the copy. */
export const duplicate = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { patternId, formKey } = parseForm(copySchema, form);
    const access = await patternAccess(viewer, patternId, "owner");
    const copy = await duplicatePattern(viewer, access, idempotencyKey(formKey, patternId));
    redirect(`/patterns/${copy.patternId}`);
  },
);

/** The owner archives a pattern. */
export const archive = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { patternId } = parseForm(patternSchema, form);
    await archivePattern(await patternAccess(viewer, patternId, "owner"));
    revalidatePath(`/patterns/${patternId}`, "layout");
    return undefined;
  },
);

/** The owner brings an archived pattern back. */
export const bringBack = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { patternId } = parseForm(patternSchema, form);
    await bringBackPattern(await patternAccess(viewer, patternId, "owner"));
    revalidatePath(`/patterns/${patternId}`, "layout");
    return undefined;
  },
);
