import { z } from "zod";

const daysSchema = z.coerce.number().int().min(1).max(90);

/** The form by which a test of the newest revision is started. */
export const nextCallSchema = z.object({ callId: z.string(), formKey: z.uuid() });

/** The form by which reports of the earlier test are counted too, or no more. */
export const countEarlierSchema = z.object({ callId: z.string(), counts: z.enum(["yes", "no"]) });

/** The form by which the pieces of a test are chosen; none for the whole garment. */
export const piecesSchema = z.object({ callId: z.string(), piece: z.array(z.string()) });

/** The form by which testers of the earlier test are invited again. */
export const againFormSchema = z.object({
  callId: z.string(),
  testerId: z.array(z.uuid()),
  days: daysSchema,
});
