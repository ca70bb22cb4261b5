import { z } from "zod";

export const takeInSchema = z.object({
  callId: z.string(),
  baseNumber: z.coerce.number().int().min(1).max(1_000_000),
  corrections: z.array(z.uuid()).max(200),
  what: z.enum(["revise", "note"]),
});
