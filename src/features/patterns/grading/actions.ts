"use server";

import { z } from "zod";
import { parsePattern } from "@/engine/pattern";
import { patternAccess } from "@/features/patterns/access";
import { viewerAction } from "@/server/action";
import { gradingAnswer } from "./data";
import { endGrading, requestGrading } from "./mutations";
import type { AskedGrading, GradingAnswer } from "./schema";

const askSchema = z.object({ document: z.unknown(), idempotencyKey: z.uuid() });

/**
 * Grades a pattern that is being edited, as the designer sees it. Locks are in the document.
 */
export const askGrading = viewerAction(
  async (viewer, patternId: string, input: z.input<typeof askSchema>): Promise<AskedGrading> => {
    const { document, idempotencyKey } = askSchema.parse(input);
    const access = await patternAccess(viewer, patternId, "editor");
    const parsed = parsePattern(document);
    if (!parsed.ok) return { status: "faults", faults: parsed.faults };
    return { status: "asked", ...(await requestGrading(access, { pattern: parsed.document, idempotencyKey })) };
  },
);

/** Stops a grading. @returns its state, because it may have finished just before. */
export const stopGrading = viewerAction(
  async (viewer, patternId: string, gradingId: string): Promise<GradingAnswer> => {
    const access = await patternAccess(viewer, patternId, "editor");
    await endGrading(access, gradingId);
    return await gradingAnswer(access, gradingId);
  },
);
