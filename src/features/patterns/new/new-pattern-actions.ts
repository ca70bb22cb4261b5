"use server";

import { redirect } from "next/navigation";
import { canonicalJson } from "@/engine/pattern";
import { actingViewer } from "@/server/action";
import { formAction } from "@/server/form-action";
import { submissionKey } from "@/server/idempotency-key";
import { beginSchema } from "./new-pattern-schema";
import { begunPattern } from "./initial-pattern";
import { createPattern } from "../mutations";

/** Creates a pattern from its sizes and its first fabric, and redirects to its editor. */
export const beginPattern = formAction(beginSchema, async (fields) => {
  const viewer = await actingViewer();
  const begun = begunPattern(fields, viewer.unit);
  if (!begun.ok) return begun.faults;
  const { document } = begun;
  const key = submissionKey(fields.formKey, canonicalJson(document));
  const { patternId } = await createPattern(viewer, { document, reason: "Created", submissionKey: key });
  redirect(`/patterns/${patternId}/edit`);
});
