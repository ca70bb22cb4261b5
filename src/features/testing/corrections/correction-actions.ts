"use server";

import { revalidatePath } from "next/cache";
import { callAccess } from "@/features/calls/access";
import { latestRevision } from "@/features/patterns/data";
import { actingViewer } from "@/server/action";
import { formAction, type FormFaults } from "@/server/form-action";
import { idempotencyKey } from "@/server/idempotency-key";
import { blockOfKey } from "../questions/place-key";
import { publishCorrection } from "./correction-mutations";
import { correctionFormSchema } from "./correction-schema";

/** The designer or an editor publishes a correction to the testers whose size it concerns. */
export const publish = formAction(correctionFormSchema, async (sent): Promise<FormFaults | undefined> => {
  const { callId, formKey, text, place: key, sizes } = sent;
  const access = await callAccess(await actingViewer(), callId, "editor");
  const { revisionId, document } = await latestRevision(access.pattern);
  const block = key === "" ? null : blockOfKey(document.instructions ?? "", key);
  if (key !== "" && block === null)
    return { place: ["The newest revision no longer has this passage. Choose another, or none."] };
  const known = document.sizes.map(({ id }) => id);
  if (!sizes.every((size) => known.includes(size)))
    return { sizes: ["The newest revision no longer has one of these sizes. Choose again."] };
  const content = JSON.stringify([text, key, sizes]);
  await publishCorrection(access, {
    ...{ text, revisionId, place: block?.place ?? null },
    // Every size, chosen one by one, also stands for sizes that a later revision adds.
    sizes: sizes.length === known.length ? [] : sizes,
    idempotencyKey: idempotencyKey(formKey, content),
  });
  revalidatePath(`/calls/${callId}`, "layout");
  return undefined;
});
