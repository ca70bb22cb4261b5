import { z } from "zod";
import { idSchema } from "@/engine/pattern";
import { pageNumberSchema } from "@/ui/page-number";
import { daySchema, testerDatesSchema } from "@/features/recruiting/listing/schema";

/** The page's query; anything else is ignored. */
export const placesQuerySchema = z.object({
  /** Whether a maybe is enough to get a size. */
  with: z.enum(["yes", "maybe"]).optional().catch(undefined),
  /** The body measurement that the ruler is of. */
  by: idSchema.optional().catch(undefined),
  /** The size whose people are listed, where not all are. */
  in: idSchema.optional().catch(undefined),
  /** The pages of those who wait, of the listed size, and of those invited. */
  waiting: pageNumberSchema.optional(),
  placed: pageNumberSchema.optional(),
  invited: pageNumberSchema.optional(),
  /** The application whose size is being changed. */
  change: z.uuid().optional().catch(undefined),
  /** How many were invited just now. */
  sent: z.coerce.number().int().min(0).optional().catch(undefined),
});

export type PlacesQuery = z.infer<typeof placesQuerySchema>;

export const givePlacesSchema = z.object({ callId: z.string(), with: z.enum(["yes", "maybe"]) });

export const changePlaceSchema = z
  .object({
    callId: z.string(),
    applicationId: z.uuid(),
    kind: z.enum(["move", "lock", "unlock", "leave-waiting", "consider"]),
    size: idSchema.optional(),
    /** The size far from their own about which the designer was warned, and goes on. */
    warned: idSchema.optional(),
  })
  .refine(({ kind, size }) => kind !== "move" || size !== undefined);

export const sendSchema = z.object({ callId: z.string(), saw: z.string(), endsOn: daySchema });

export const offerSchema = z.object({ callId: z.string(), endsOn: z.string().default("") });

export const fillSchema = z.object({
  ...testerDatesSchema.shape,
  callId: z.string(),
  size: idSchema,
  applicationId: z.uuid({ error: "Choose who to invite." }),
  endsOn: daySchema,
});
