"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { callPageHref } from "@/features/calls/call-pages";
import {
  CALL_FORMAT,
  CALL_FORMAT_2,
  gradingWarnings,
  ownValue,
  parseCallInSteps,
  parsePattern,
  PATTERN_FORMAT,
  PATTERN_FORMAT_1,
  readJson,
  type Fault,
} from "@/engine/pattern";
import { combinedCall } from "@/engine/revision";
import { LARGEST_DOCUMENT_BYTES, type BroughtIn } from "@/features/patterns/schema";
import { viewerAction } from "@/server/action";
import { inSteps } from "@/server/in-steps";
import { idempotencyKey } from "@/server/idempotency-key";
import type { Viewer } from "@/server/viewer";
import { storeCall, storePattern } from "../document-mutations";

const titleSchema = z.string().trim().max(200, { error: "A title has at most 200 characters." });
const inputSchema = z.object({ text: z.string(), title: z.string(), formKey: z.uuid() });

/** Imports a pattern or a call document: everything in it or, if it has a fault, nothing. */
export const importDocument = viewerAction(async (viewer, input: z.input<typeof inputSchema>): Promise<BroughtIn> => {
  const { text, title: typedTitle, formKey } = inputSchema.parse(input);
  if (Buffer.byteLength(text) > LARGEST_DOCUMENT_BYTES) {
    return faulty([{ path: "$", says: "is larger than 20 MB, the most that can be imported at once." }]);
  }
  const title = titleSchema.safeParse(typedTitle);
  if (!title.success)
    return {
      status: "title",
      says: title.error.issues[0]?.message ?? "The title cannot be stored. Type it again instead of pasting it.",
    };
  const json = readJson(text);
  if (!json.ok) return faulty(json.faults);
  const key = idempotencyKey(formKey, text);
  const imported = await store(viewer, json.value, { title: title.data, key });
  revalidatePath("/patterns");
  return imported;
});

async function store(
  viewer: Viewer,
  value: unknown,
  { title, key }: { readonly title: string; readonly key: string },
): Promise<BroughtIn> {
  switch (formatOf(value)) {
    case PATTERN_FORMAT_1:
    case PATTERN_FORMAT: {
      const parsed = parsePattern(value);
      if (!parsed.ok) return faulty(parsed.faults);
      const { patternId } = await storePattern(viewer, { document: parsed.document, idempotencyKey: key });
      return { status: "stored", href: `/patterns/${patternId}`, warnings: gradingWarnings(parsed.document) };
    }
    case CALL_FORMAT:
    case CALL_FORMAT_2: {
      const parsed = await inSteps(parseCallInSteps(value));
      if (!parsed.ok) return faulty(parsed.faults);
      // The reports of earlier tests come in as reports of this one.
      const { call } = combinedCall(parsed.document);
      const called = title === "" ? call.pattern.name : title;
      const { callId } = await storeCall(viewer, { call, title: called, idempotencyKey: key });
      return { status: "stored", href: callPageHref(callId, "differences"), warnings: gradingWarnings(call.pattern) };
    }
    default:
      return faulty([
        {
          path: "format",
          says: `must be “${PATTERN_FORMAT}”, “${PATTERN_FORMAT_1}”, “${CALL_FORMAT}” or “${CALL_FORMAT_2}”.`,
        },
      ]);
  }
}

function formatOf(value: unknown): unknown {
  return typeof value === "object" && value !== null ? ownValue({ ...value }, "format") : undefined;
}

function faulty(faults: readonly Fault[]): BroughtIn {
  return { status: "faults", faults };
}
