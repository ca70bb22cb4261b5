import { z } from "zod";
import { CORRECTION_ANSWERS } from "@/engine/reporting";

export const answerSchema = z.object({
  testerId: z.string(),
  correctionId: z.uuid(),
  answer: z.enum(CORRECTION_ANSWERS),
});

/** Beside the counts that they confirm, each under its own name. */
export const confirmSchema = z.object({ testerId: z.string(), correctionId: z.uuid() });
