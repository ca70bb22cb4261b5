"use server";

import { redirect } from "next/navigation";
import { canonicalJson } from "@/engine/pattern";
import { actingViewer } from "@/server/action";
import { formAction } from "@/server/form-action";
import { idempotencyKey } from "@/server/idempotency-key";
import { createPattern } from "../mutations";
import { templatePattern } from "./template-pattern";
import { templateSchema } from "./template-schema";

/** Creates a graded pattern from a template, and redirects to it. */
export const newFromTemplate = formAction(templateSchema, async (fields) => {
  const viewer = await actingViewer();
  const made = templatePattern(fields, viewer.unit);
  if (!made.ok) return made.faults;
  const { document } = made;
  const key = idempotencyKey(fields.formKey, canonicalJson(document));
  const { patternId } = await createPattern(viewer, { document, reason: "From a template", idempotencyKey: key });
  redirect(`/patterns/${patternId}`);
});
