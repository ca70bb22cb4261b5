"use server";

import { revalidatePath } from "next/cache";
import type { Place } from "@/engine/instructions";
import type { PatternDocument } from "@/engine/pattern";
import { callAccess } from "@/features/calls/access";
import { latestRevision } from "@/features/patterns/data";
import { actingViewer } from "@/server/action";
import { formAction, type FormFaults } from "@/server/form-action";
import { idempotencyKey } from "@/server/idempotency-key";
import { blockOfKey } from "../questions/place-key";
import { countNumbers } from "./count-numbers";
import { publishCorrection } from "./correction-mutations";
import { correctionFormSchema, type SentCorrection } from "./correction-schema";
import { sentNumbers } from "./sent-numbers";

/** The designer or an editor publishes a correction to the testers whose size it concerns. */
export const publish = formAction(correctionFormSchema, async (sent): Promise<FormFaults | undefined> => {
  const { callId, formKey, text } = sent;
  const access = await callAccess(await actingViewer(), callId, "editor");
  const { revisionId, document } = await latestRevision(access.pattern);
  const keys = [...new Set(sent.place)].filter((key) => key !== "");
  const places = placesOf(document, keys);
  if (places.length < keys.length)
    return { place: ["The newest revision no longer has this passage. Choose another, or none."] };
  const { numbers, faults } = sentNumbers(sent, countNumbers(document, []));
  if (faults.length > 0) return { becomes: faults };
  const known = document.sizes.map(({ id }) => id);
  if (!sent.sizes.every((size) => known.includes(size)))
    return { sizes: ["The newest revision no longer has one of these sizes. Choose again."] };
  const sizes = concernedSizes(known, sent, numbers);
  const [place = null, ...morePlaces] = places;
  const content = JSON.stringify([text, keys, sizes, numbers]);
  const key = idempotencyKey(formKey, content);
  await publishCorrection(access, { text, revisionId, place, morePlaces, numbers, sizes, idempotencyKey: key });
  revalidatePath(`/calls/${callId}`, "layout");
  return undefined;
});

function placesOf({ instructions = "" }: PatternDocument, keys: readonly string[]): Place[] {
  return keys.flatMap((key) => blockOfKey(instructions, key)?.place ?? []);
}

/** @returns none where every size was chosen, for that also stands for sizes that a later revision adds. */
function concernedSizes(
  known: readonly string[],
  { sizes }: Pick<SentCorrection, "sizes">,
  numbers: readonly { readonly size: string }[],
): string[] {
  const concerned = known.filter((id) => sizes.includes(id) || numbers.some(({ size }) => size === id));
  return sizes.length === known.length ? [] : concerned;
}
