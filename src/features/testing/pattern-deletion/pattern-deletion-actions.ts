"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { patternAccess } from "@/features/patterns/access";
import { latestRevision } from "@/features/patterns/data";
import { actingViewer } from "@/server/action";
import { formAction } from "@/server/form-action";
import { patternDeletionSchema } from "./pattern-deletion-schema";
import { deletePattern } from "./pattern-deletion-mutations";

/** Deletes a pattern of the viewer's own, who types its name to confirm. */
export const deleteForGood = formAction(patternDeletionSchema, async ({ patternId, name }) => {
  const access = await patternAccess(await actingViewer(), patternId, "owner");
  const { document } = await latestRevision(access);
  if (plainly(name) !== plainly(document.name)) return { name: [`This is not its name. Type “${document.name}”.`] };
  await deletePattern(access);
  revalidatePath("/patterns", "layout");
  redirect("/patterns");
});

/** As a person compares two names. */
function plainly(name: string): string {
  return name.normalize("NFKC").replaceAll(/\s+/gu, " ").trim().toLocaleLowerCase("en");
}
