"use server";

import { revalidatePath } from "next/cache";
import { actingViewer, viewerAction, type Failure } from "@/server/action";
import { formAction } from "@/server/form-action";
import { parseForm } from "@/server/read-form";
import { patternAccess } from "../access";
import { reopenFix, signOffSizes, tickOffFix, withdrawSignOff } from "./follow-up-mutations";
import { fixSchema, signOffSchema, withdrawSignOffSchema } from "./follow-up-schema";

/** The designer or an editor notes who has checked corrected sizes. */
export const signOff = formAction(signOffSchema, async ({ patternId, ...signed }) => {
  const access = await patternAccess(await actingViewer(), patternId, "editor");
  await signOffSizes(access, signed);
  refresh();
  return undefined;
});

/** Takes that back. */
export const withdrawSigned = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { patternId, ...signed } = parseForm(withdrawSignOffSchema, form);
    await withdrawSignOff(await patternAccess(viewer, patternId, "editor"), signed);
    refresh();
    return undefined;
  },
);

/** The designer or an editor says that the text has the right number now. */
export const tickOff = fixAction(tickOffFix);

/** The designer or an editor takes that back. */
export const reopen = fixAction(reopenFix);

function fixAction(change: typeof tickOffFix) {
  return viewerAction(async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { patternId, fixId } = parseForm(fixSchema, form);
    await change(await patternAccess(viewer, patternId, "editor"), fixId);
    refresh();
    return undefined;
  });
}

/** Pages of the pattern and of all its tests show it. */
function refresh(): void {
  revalidatePath("/", "layout");
}
