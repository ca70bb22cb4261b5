"use server";

import { revalidatePath } from "next/cache";
import { patternAccess } from "@/features/patterns/access";
import { actingViewer, viewerAction, type Failure } from "@/server/action";
import { formAction, type FormFaults } from "@/server/form-action";
import { parseForm } from "@/server/read-form";
import { isTimeZone } from "@/server/time-zone";
import { publishFormSchema, unpublishSchema } from "./errata-schema";
import { publishMoment } from "./publish-moment";
import { markPublished, unmarkPublished } from "./publish-mutations";

const TO_COME: FormFaults = {
  day: ["This day is still to come. Mark it on the day itself, or choose an earlier one."],
};
const TAKEN: FormFaults = { label: ["Another revision has this version. Enter another, such as 1.1."] };

/** The designer marks a revision as published. */
export const publishVersion = formAction(publishFormSchema, async ({ patternId, day, timeZone, ...version }) => {
  const access = await patternAccess(await actingViewer(), patternId, "editor");
  const publishedAt = publishMoment(day, isTimeZone(timeZone) ? timeZone : "UTC", new Date());
  if (publishedAt === null) return TO_COME;
  const outcome = await markPublished(access, { ...version, publishedAt });
  revalidatePath(`/patterns/${patternId}`, "layout");
  return outcome === "taken" ? TAKEN : undefined;
});

/** The designer takes that back. */
export const unpublishVersion = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { patternId, versionId } = parseForm(unpublishSchema, form);
    await unmarkPublished(await patternAccess(viewer, patternId, "editor"), versionId);
    revalidatePath(`/patterns/${patternId}`, "layout");
    return undefined;
  },
);
