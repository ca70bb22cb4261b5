"use server";

import { redirect } from "next/navigation";
import { canonicalJson } from "@/engine/pattern";
import { actingViewer } from "@/server/action";
import { formAction } from "@/server/form-action";
import { idempotencyKey } from "@/server/idempotency-key";
import { newPatternSchema } from "./new-pattern-schema";
import { initialPattern } from "./initial-pattern";
import { createPattern } from "../mutations";

/** Creates a pattern from its sizes and its first fabric, and redirects to its editor. */
export const newPattern = formAction(newPatternSchema, async (fields) => {
  const viewer = await actingViewer();
  const initial = initialPattern(fields, viewer.unit);
  if (!initial.ok) return initial.faults;
  const { document } = initial;
  const key = idempotencyKey(fields.formKey, canonicalJson(document));
  const { patternId } = await createPattern(viewer, { document, reason: "Created", idempotencyKey: key });
  redirect(`/patterns/${patternId}/edit`);
});
