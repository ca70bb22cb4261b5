import { z } from "zod";
import { idSchema, labelSchema, textSchema } from "@/engine/pattern";

/** Somebody else who wears the garment. */
export const WEARERS = ["adult", "child"] as const;

export const EXPERIENCES = ["first", "some", "many"] as const;

/** An applicant's answers as stored, without name, e-mail address and body measurements. */
export const applicationSchema = z.strictObject({
  /** The sizes they would make; null for any that fits. */
  accepts: z.array(idSchema).nullable(),
  /** Preferred sizes in order; may be empty. */
  prefers: z.array(idSchema),
  /** The measurements are somebody else's, for whom the garment is made. */
  forAnother: z.boolean(),
  /** That person, who agrees to their measurements and photos being used; for a child a parent or guardian does. */
  wearer: z.enum(WEARERS).optional(),
  yarn: textSchema,
  tool: labelSchema,
  unit: z.enum(["cm", "in"]),
  /** Of stitch names. */
  terms: z.enum(["us", "uk"]),
  /** Null if the browser did not give one. */
  timeZone: z.string().nullable(),
  experience: z.enum(EXPERIENCES),
  handle: labelSchema,
  pastWork: textSchema,
});

export type ApplicationDocument = z.infer<typeof applicationSchema>;

/** Body measurement -> cm, as stored. */
export const measurementsSchema = z.record(idSchema, z.number());

/** Body measurement -> what was typed. */
export const typedBodySchema = z.record(idSchema, z.string());

export const applicationDecisionSchema = z.enum(["yes", "maybe", "no"]);

/** The designer's decision on an application, before sizes are assigned. */
export type ApplicationDecision = z.infer<typeof applicationDecisionSchema>;
