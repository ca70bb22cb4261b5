"use server";

import { z } from "zod";
import { canonicalJson } from "@/engine/pattern";
import { measurementChoicesSchema, readMeasurementTable } from "@/engine/tables";
import { viewerAction } from "@/server/action";
import { idempotencyKey } from "@/server/idempotency-key";
import { parseTableText } from "@/engine/tables";
import { createPattern } from "../mutations";

const pastedSchema = z.strictObject({
  text: z.string().max(900_000),
  choices: measurementChoicesSchema,
  /** The designer's confirmation of unusual numbers. */
  confirmed: z.boolean(),
  /** Idempotency key of the pasted table: sending it twice makes one pattern. */
  tableKey: z.uuid(),
});

export type PastedMeasurements = z.infer<typeof pastedSchema>;

export type MadePattern =
  | { readonly status: "made"; readonly patternId: string; readonly name: string }
  | { readonly status: "failed"; readonly says: string };

/** Creates a pattern from a pasted table: reads it like the screen does, and saves nothing unless all of it can be read. */
export const makePastedPattern = viewerAction(async (viewer, input: PastedMeasurements): Promise<MadePattern> => {
  const pasted = pastedSchema.safeParse(input);
  if (!pasted.success) return { status: "failed", says: "The table is too long to send at once. Paste a part of it." };
  const { text, choices, confirmed, tableKey } = pasted.data;
  const table = readMeasurementTable(parseTableText(text), choices);
  if (!table.ok) return { status: "failed", says: table.faults[0]?.message ?? "The table cannot be read." };
  if (table.questions.length > 0 && !confirmed) {
    return { status: "failed", says: "Some numbers are unusual. Fix them or confirm that they are correct." };
  }
  const { pattern: document } = table;
  const { patternId } = await createPattern(viewer, {
    document,
    reason: "Created from a pasted table of measurements.",
    idempotencyKey: idempotencyKey(tableKey, canonicalJson(document)),
  });
  return { status: "made", patternId, name: document.name };
});
