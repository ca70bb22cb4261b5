"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { patternAccess, type PatternAccess } from "@/features/patterns/access";
import { viewerAction, type Failure } from "@/server/action";
import { parseForm } from "@/server/read-form";
import type { Viewer } from "@/server/viewer";
import { photoNote } from "./photo-schema";
import { deleteFromSample, storeDescription, storeMain } from "./sample-mutations";

const photoSchema = z.object({ patternId: z.string(), photoId: z.uuid() });
const describedSchema = photoSchema.extend({ note: z.string().transform(photoNote) });

type Described = Failure | { readonly status: "saved" };

/** A designer deletes a photo of their sample. */
export const deleteSamplePhoto = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { patternId, photoId } = parseForm(photoSchema, form);
    return await forSample(viewer, patternId, (access) => deleteFromSample(access, photoId));
  },
);

/** A designer says what a photo of their sample shows. */
export const describeSamplePhoto = viewerAction(
  async (viewer, _last: Described | undefined, form: FormData): Promise<Described> => {
    const { patternId, photoId, note } = parseForm(describedSchema, form);
    await forSample(viewer, patternId, (access) => storeDescription(access, photoId, note));
    return { status: "saved" };
  },
);

/** A designer chooses the photo that stands for the pattern. */
export const chooseMainPhoto = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { patternId, photoId } = parseForm(photoSchema, form);
    return await forSample(viewer, patternId, (access) => storeMain(access, photoId, new Date()));
  },
);

async function forSample(
  viewer: Viewer,
  patternId: string,
  change: (access: PatternAccess) => Promise<void>,
): Promise<undefined> {
  await change(await patternAccess(viewer, patternId, "editor"));
  revalidatePath(`/patterns/${patternId}/photos`);
  return undefined;
}
