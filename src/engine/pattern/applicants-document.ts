import { z } from "zod";
import { MAX_TESTERS, placesSchema } from "./call-document";
import { type DeepReadonly, byId, idSchema, positiveSchema, wholeSchema } from "./schema-parts";
import { patternSchema } from "./pattern-schema";

export const APPLICANTS_FORMAT = "sizewright/applicants@1";

const applicantSchema = z.strictObject({
  id: idSchema,
  body: byId(positiveSchema),
  accepts: z.array(idSchema).optional(),
  prefers: z.array(idSchema).optional(),
  record: z.strictObject({ finished: wholeSchema, dropped: wholeSchema }).optional(),
  locked: idSchema.optional(),
  excluded: z.boolean().optional(),
});

/** Schema of the applicants document in JSON; references are checked by `applicantsFaults`. */
export const applicantsSchema = z.strictObject({
  format: z.literal(APPLICANTS_FORMAT),
  pattern: patternSchema,
  places: placesSchema,
  fitBy: z.array(idSchema),
  applicants: z.array(applicantSchema).max(MAX_TESTERS, { error: `must hold at most ${MAX_TESTERS} applicants.` }),
});

export type ApplicantsDocument = DeepReadonly<z.infer<typeof applicantsSchema>>;
