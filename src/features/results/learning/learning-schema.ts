import { z } from "zod";

/** The form by which what earlier tests showed is used in a test's results, or no more. */
export const usePriorSchema = z.object({ callId: z.string(), uses: z.enum(["yes", "no"]) });
